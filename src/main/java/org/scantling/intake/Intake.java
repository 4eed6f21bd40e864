package org.scantling.intake;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.scantling.design.Site;
import org.scantling.reasons.BaseChoice;

/**
 * A site as read, with what an honest answer has to say about the reading.
 *
 * @param site the site with its base design
 * @param defaulted paths that the files leave out, so that a rule or a default word decides them;
 *     those of the base design start with {@code base.}
 * @param originalText what was written, by path, before units were converted
 * @param baseFile the path of its base design, as it was written
 * @param choice how that base was chosen, where several were named and one was chosen
 */
public record Intake(
    Site site,
    List<String> defaulted,
    SortedMap<String, String> originalText,
    String baseFile,
    Optional<BaseChoice> choice) {
  public Intake {
    defaulted = List.copyOf(defaulted);
    originalText = Collections.unmodifiableSortedMap(new TreeMap<>(originalText));
  }

  /** The same, over a base that was chosen so. */
  public Intake chosen(BaseChoice why) {
    return new Intake(site, defaulted, originalText, baseFile, Optional.of(why));
  }
}
