package org.scantling.print;

import org.scantling.reasons.LeastChange;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** What it takes for a wanted answer, as text or Markdown for one reader. */
public final class KeepText {
  private KeepText() {}

  public static String text(LeastChange least, Words words, Reader reader, PrintOptions options) {
    return TextPage.print(page(least, words, reader, options), options);
  }

  public static String markdown(
      LeastChange least, Words words, Reader reader, PrintOptions options) {
    return MarkdownPage.print(page(least, words, reader, options));
  }

  private static Page page(LeastChange least, Words words, Reader reader, PrintOptions options) {
    return new KeepPage(Told.to(reader, least.today(), words, options.units()), least).page();
  }
}
