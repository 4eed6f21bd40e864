package org.scantling.print;

import java.util.List;

/** Prints a page as Markdown. */
public final class MarkdownPage {
  private final StringBuilder text = new StringBuilder();

  private MarkdownPage() {}

  public static String print(Page page) {
    MarkdownPage markdown = new MarkdownPage();
    page.blocks().forEach(markdown::block);
    return markdown.text.toString();
  }

  private void block(Block block) {
    if (!text.isEmpty()) {
      text.append('\n');
    }
    if (block instanceof Block.Heading heading) {
      line("#".repeat(heading.level()) + " " + plain(heading.text()));
    } else if (block instanceof Block.Paragraph paragraph) {
      line(plain(paragraph.text()));
    } else if (block instanceof Block.Items items) {
      items.items().forEach(this::item);
    } else if (block instanceof Block.Grid grid) {
      grid(grid.rows());
    } else if (block instanceof Block.Outline outline) {
      outline.lines().forEach(step -> line("  ".repeat(step.depth()) + "- " + plain(step.text())));
    } else if (block instanceof Block.Picture picture) {
      line("```");
      picture.lines().forEach(this::line);
      line("```");
    }
  }

  private void item(Block.Item item) {
    String lead = item.lead().isEmpty() ? "" : "**" + plain(item.lead()) + ":** ";
    line("- " + lead + plain(item.text()));
  }

  private void grid(List<List<String>> rows) {
    for (int i = 0; i < rows.size(); i++) {
      StringBuilder row = new StringBuilder("|");
      rows.get(i).forEach(cell -> row.append(' ').append(plain(cell)).append(" |"));
      line(row.toString());
      if (i == 0) {
        line("|" + " --- |".repeat(rows.get(0).size()));
      }
    }
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** Signs that Markdown would read as its own. */
  private static String plain(String words) {
    return words.replaceAll("([*_|<>\\\\`])", "\\\\$1");
  }
}
