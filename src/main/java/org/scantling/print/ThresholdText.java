package org.scantling.print;

import org.scantling.reasons.Thresholds;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** How far each choice holds, as text for the builder. */
public final class ThresholdText {
  private ThresholdText() {}

  /**
   * @param asked true where somebody asked for just these choices: then each is told in full
   */
  public static String of(Thresholds thresholds, Words words, boolean asked, PrintOptions options) {
    return TextPage.print(
        new ThresholdPage(
                Told.to(Reader.BUILDER, thresholds.today(), words, options.units()),
                thresholds,
                asked)
            .page(),
        options);
  }
}
