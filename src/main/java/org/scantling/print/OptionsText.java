package org.scantling.print;

import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.WholeOptions;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** Whole structures that could be built, as text or Markdown. */
public final class OptionsText {
  private OptionsText() {}

  /** Plain text, no line wider than the options say. */
  public static String text(WholeOptions found, Words words, Reader reader, PrintOptions how) {
    return TextPage.print(page(found, words, reader, how.units()), how);
  }

  public static String markdown(WholeOptions found, Words words, Reader reader, PrintOptions how) {
    return MarkdownPage.print(page(found, words, reader, how.units()));
  }

  /** For the client side by side, a row for each way; the first row is the head. */
  public static Block.Grid clientGrid(WholeOptions found, Words words, UnitSystem units) {
    return ClientOptions.grid(found, words, units);
  }

  private static Page page(WholeOptions found, Words words, Reader reader, UnitSystem units) {
    return reader == Reader.CLIENT
        ? ClientOptions.of(found, words, units)
        : OptionsPage.of(found, words, units);
  }
}
