package org.scantling.print;

import java.util.Optional;
import org.scantling.reasons.LeastChange;
import org.scantling.reasons.Proposal;
import org.scantling.words.Reader;
import org.scantling.words.Topic;
import org.scantling.words.Words;

/** The same as {@link WhyText}, in Markdown. */
public final class WhyMarkdown {
  private WhyMarkdown() {}

  public static String of(
      Proposal proposal,
      Words words,
      Topic topic,
      Optional<LeastChange> back,
      Reader reader,
      PrintOptions options) {
    return MarkdownPage.print(
        WhyPage.of(Told.to(reader, proposal, words, options.units()), topic, back));
  }
}
