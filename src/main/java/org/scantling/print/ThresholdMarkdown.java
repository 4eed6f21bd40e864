package org.scantling.print;

import org.scantling.reasons.Thresholds;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** How far each choice holds, as Markdown for the builder. */
public final class ThresholdMarkdown {
  private ThresholdMarkdown() {}

  /**
   * @param asked true where somebody asked for just these choices: then each is told in full
   */
  public static String of(Thresholds thresholds, Words words, boolean asked, PrintOptions options) {
    return MarkdownPage.print(
        new ThresholdPage(
                Told.to(Reader.BUILDER, thresholds.today(), words, options.units()),
                thresholds,
                asked)
            .page());
  }
}
