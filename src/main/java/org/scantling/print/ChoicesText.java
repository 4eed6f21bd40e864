package org.scantling.print;

import java.util.List;
import org.scantling.words.ClosedList;
import org.scantling.words.Reader;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** The words that a site file accepts, as text or Markdown. */
public final class ChoicesText {
  private final Voice voice;
  private final PrintOptions options;
  private final boolean markdown;

  /**
   * @param markdown true for Markdown, false for plain text
   */
  public ChoicesText(Words words, PrintOptions options, boolean markdown) {
    this.voice = words.voice(Reader.BUILDER, options.units());
    this.options = options;
    this.markdown = markdown;
  }

  /** Which lists there are. */
  public String all(List<ClosedList> lists) {
    return print(ChoicesPage.of(lists, voice));
  }

  /** One list in full. */
  public String one(ClosedList list) {
    return print(ChoicesPage.of(list, voice));
  }

  private String print(Page page) {
    return markdown ? MarkdownPage.print(page) : TextPage.print(page, options);
  }
}
