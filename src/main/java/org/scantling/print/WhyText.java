package org.scantling.print;

import java.util.Optional;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Proposal;
import org.scantling.words.Reader;
import org.scantling.words.Topic;
import org.scantling.words.Words;

/** One decision explained, as text for one reader. */
public final class WhyText {
  private WhyText() {}

  /**
   * The text, no line wider than the options say.
   *
   * @param back what would bring the base's answer back, where that was searched
   */
  public static String of(
      Proposal proposal,
      Words words,
      Topic topic,
      Optional<LeastChange> back,
      Reader reader,
      PrintOptions options) {
    return TextPage.print(
        WhyPage.of(Told.to(reader, proposal, words, options.units()), topic, back), options);
  }
}
