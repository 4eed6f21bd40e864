package org.scantling.print;

import java.util.List;
import org.scantling.words.ClosedList;

/** The words that a site file accepts, as text or Markdown. */
public final class ChoicesText {
  private final PrintOptions options;
  private final boolean markdown;

  /**
   * @param markdown true for Markdown, false for plain text
   */
  public ChoicesText(PrintOptions options, boolean markdown) {
    this.options = options;
    this.markdown = markdown;
  }

  /** Which lists there are. */
  public String all(List<ClosedList> lists) {
    return print(ChoicesPage.of(lists));
  }

  /** One list in full. */
  public String one(ClosedList list) {
    return print(ChoicesPage.of(list));
  }

  private String print(Page page) {
    return markdown ? MarkdownPage.print(page) : TextPage.print(page, options);
  }
}
