package org.scantling.print;

import org.scantling.reasons.TurningPoints;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** How far each choice holds, as Markdown for the builder. */
public final class TurningMarkdown {
  private TurningMarkdown() {}

  /**
   * @param asked true where somebody asked for just these choices: then each is told in full
   */
  public static String of(TurningPoints turning, Words words, boolean asked, PrintOptions options) {
    return MarkdownPage.print(
        new TurningPage(
                Told.to(Reader.BUILDER, turning.today(), words, options.units()), turning, asked)
            .page());
  }
}
