package org.scantling.print;

import java.util.List;
import org.scantling.quantity.UnitSystem;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** Several proposals side by side, as text or Markdown. */
public final class ComparisonText {
  private ComparisonText() {}

  /** Plain text, no line wider than the options say. */
  public static String text(
      List<ComparedSite> columns, Words words, Reader reader, PrintOptions options) {
    return TextPage.print(page(columns, words, reader, options.units()), options);
  }

  public static String markdown(
      List<ComparedSite> columns, Words words, Reader reader, PrintOptions options) {
    return MarkdownPage.print(page(columns, words, reader, options.units()));
  }

  private static Page page(
      List<ComparedSite> columns, Words words, Reader reader, UnitSystem units) {
    return reader == Reader.CLIENT
        ? ClientComparison.of(columns, words, units)
        : ComparisonPage.of(columns, words, units);
  }
}
