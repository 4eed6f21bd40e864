package org.scantling.print;

import java.util.List;
import org.scantling.words.Words;

/** Several proposals side by side, as text or Markdown. */
public final class ComparisonText {
  private ComparisonText() {}

  /** Plain text, no line wider than the options say. */
  public static String text(List<ComparedSite> columns, Words words, PrintOptions options) {
    return TextPage.print(ComparisonPage.of(columns, words, options.units()), options);
  }

  public static String markdown(List<ComparedSite> columns, Words words, PrintOptions options) {
    return MarkdownPage.print(ComparisonPage.of(columns, words, options.units()));
  }
}
