package org.scantling.intake;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.scantling.design.Site;

/**
 * A site as read, with what an honest answer has to say about the reading.
 *
 * @param site the site with its base design
 * @param defaulted paths that the files leave out, so that a rule or a default word decides them;
 *     those of the base design start with {@code base.}
 * @param originalText what was written, by path, before units were converted
 */
public record Intake(Site site, List<String> defaulted, SortedMap<String, String> originalText) {
  public Intake {
    defaulted = List.copyOf(defaulted);
    originalText = Collections.unmodifiableSortedMap(new TreeMap<>(originalText));
  }
}
