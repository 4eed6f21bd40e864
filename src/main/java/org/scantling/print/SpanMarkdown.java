package org.scantling.print;

import org.scantling.spans.SpanTable;
import org.scantling.words.Words;

/** A span table as Markdown. */
public final class SpanMarkdown {
  private SpanMarkdown() {}

  public static String of(SpanTable table, Words words, PrintOptions options) {
    return MarkdownPage.print(SpanPage.of(table, words, options.units()));
  }
}
