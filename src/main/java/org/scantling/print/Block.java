package org.scantling.print;

import java.util.List;

/** A piece of a page. */
public sealed interface Block {
  /** A heading; level 1 is the page's own. */
  record Heading(int level, String text) implements Block {}

  record Paragraph(String text) implements Block {}

  /**
   * A list.
   *
   * @param items each with the things that hang under it
   */
  record Items(List<Item> items) implements Block {
    public Items {
      items = List.copyOf(items);
    }

    public static Items of(List<String> texts) {
      return new Items(texts.stream().map(text -> new Item("", text)).toList());
    }
  }

  /**
   * @param lead what it is about, set off from the rest; may be empty
   */
  record Item(String lead, String text) {}

  /** A table; the first row is its head. */
  record Grid(List<List<String>> rows) implements Block {
    public Grid {
      rows = List.copyOf(rows);
    }
  }

  /** Lines that keep their indentation, two spaces a step. */
  record Outline(List<Step> lines) implements Block {
    public Outline {
      lines = List.copyOf(lines);
    }
  }

  record Step(int depth, String text) {}

  /** Lines that are kept as they are, sign under sign. */
  record Picture(List<String> lines) implements Block {
    public Picture {
      lines = List.copyOf(lines);
    }
  }
}
