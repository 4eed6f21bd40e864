package org.scantling.print;

import java.util.ArrayList;
import java.util.List;

/** Prints a page as plain text. */
public final class TextPage {
  private static final String BOLD = "\u001b[1m";
  private static final String PLAIN = "\u001b[0m";
  private static final String INDENT = "  ";

  private final PrintOptions options;
  private final List<String> lines = new ArrayList<>();

  private TextPage(PrintOptions options) {
    this.options = options;
  }

  public static String print(Page page, PrintOptions options) {
    TextPage text = new TextPage(options);
    boolean underHeading = true;
    for (Block block : page.blocks()) {
      if (!underHeading) {
        text.lines.add("");
      }
      text.block(block);
      underHeading = block instanceof Block.Heading heading && heading.level() > 1;
    }
    return String.join("\n", text.lines) + "\n";
  }

  private void block(Block block) {
    if (block instanceof Block.Heading heading) {
      heading(heading);
    } else if (block instanceof Block.Paragraph paragraph) {
      wrapped(paragraph.text(), "", "");
    } else if (block instanceof Block.Items items) {
      items(items);
    } else if (block instanceof Block.Grid grid) {
      lines.addAll(GridText.lines(grid.rows(), options.width()));
    } else if (block instanceof Block.Outline outline) {
      outline.lines().forEach(this::step);
    } else if (block instanceof Block.Picture picture) {
      lines.addAll(picture.lines());
    }
  }

  private void heading(Block.Heading heading) {
    for (String line : Wrap.lines(heading.text(), "", "", options.width())) {
      lines.add(options.colour() ? BOLD + line + PLAIN : line);
    }
    if (heading.level() == 1) {
      lines.add("=".repeat(Math.min(options.width(), heading.text().length())));
    } else {
      String under = heading.level() == 2 ? "-" : ".";
      lines.add(under.repeat(Math.min(options.width(), heading.text().length())));
    }
  }

  private void items(Block.Items items) {
    for (Block.Item item : items.items()) {
      String text = item.lead().isEmpty() ? item.text() : item.lead() + ": " + item.text();
      wrapped(text, "- ", INDENT);
    }
  }

  private void step(Block.Step step) {
    String indent = INDENT.repeat(step.depth());
    wrapped(step.text(), indent, indent + INDENT);
  }

  private void wrapped(String text, String first, String next) {
    lines.addAll(Wrap.lines(text, first, next, options.width()));
  }
}
