package org.scantling.sheets;

import java.util.ArrayList;
import java.util.List;
import org.scantling.print.Block;
import org.scantling.print.Page;

/** Puts the parts of a sheet one under the other; whole pages of text may be taken in. */
final class SheetParts {
  private final List<Part> parts = new ArrayList<>();

  SheetParts add(Part part) {
    parts.add(part);
    return this;
  }

  SheetParts heading(String text) {
    return add(new Part.Heading(2, text));
  }

  SheetParts under(String text) {
    return add(new Part.Heading(3, text));
  }

  SheetParts prose(String text) {
    return add(new Part.Prose(Part.Manner.PLAIN, text));
  }

  SheetParts small(String text) {
    return add(new Part.Prose(Part.Manner.SMALL, text));
  }

  /** All of a page, its headings one lower than there. */
  SheetParts page(Page page) {
    return page(page, 1);
  }

  /**
   * The same.
   *
   * @param lower by how much its headings are lower
   */
  SheetParts page(Page page, int lower) {
    String under = "";
    for (Block block : page.blocks()) {
      if (block instanceof Block.Heading heading) {
        under = heading.text();
        add(new Part.Heading(Math.max(2, heading.level() + lower), under));
      } else {
        add(part(block, under));
      }
    }
    return this;
  }

  /** A page whose first list is one of steps. */
  SheetParts steps(Page page) {
    int from = parts.size();
    page(page);
    for (int i = from; i < parts.size(); i++) {
      if (parts.get(i) instanceof Part.Bullets list) {
        parts.set(i, new Part.Steps(list.items()));
        return this;
      }
    }
    return this;
  }

  /** What goes with a proposal wherever it goes; the first list is of what to heed. */
  SheetParts caveats(Page page) {
    int from = parts.size();
    page(page, 0);
    for (int i = from; i < parts.size(); i++) {
      if (parts.get(i) instanceof Part.Bullets list) {
        parts.set(i, new Part.Bullets(list.items(), true));
        return this;
      }
    }
    return this;
  }

  private static Part part(Block block, String under) {
    if (block instanceof Block.Paragraph paragraph) {
      return new Part.Prose(Part.Manner.PLAIN, paragraph.text());
    }
    if (block instanceof Block.Items items) {
      return new Part.Bullets(items.items(), false);
    }
    if (block instanceof Block.Grid grid) {
      return new Part.Table(
          under, grid.rows().get(0), grid.rows().subList(1, grid.rows().size()), -1);
    }
    throw new IllegalArgumentException("no sheet holds a " + block.getClass().getSimpleName());
  }

  List<Part> parts() {
    return List.copyOf(parts);
  }
}
