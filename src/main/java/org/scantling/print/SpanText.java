package org.scantling.print;

import org.scantling.spans.SpanTable;
import org.scantling.words.Words;

/** A span table as text. */
public final class SpanText {
  private SpanText() {}

  public static String of(SpanTable table, Words words, PrintOptions options) {
    return TextPage.print(SpanPage.of(table, words, options.units()), options);
  }
}
