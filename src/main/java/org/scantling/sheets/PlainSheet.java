package org.scantling.sheets;

import java.util.ArrayList;
import java.util.List;
import org.scantling.print.Block;
import org.scantling.print.Page;

/**
 * A sheet as text: without its drawings, headings that would stand over nothing, and what is filled
 * in by hand.
 */
public final class PlainSheet {
  private final Page page = new Page();

  private PlainSheet() {}

  public static Page of(SheetDocument sheet) {
    PlainSheet plain = new PlainSheet();
    plain.page.title(sheet.title());
    List<Part> told = sheet.parts().stream().filter(PlainSheet::told).toList();
    for (int i = 0; i < told.size(); i++) {
      boolean empty =
          told.get(i) instanceof Part.Heading heading
              && i + 1 < told.size()
              && over(heading, told.get(i + 1));
      if (!empty) {
        plain.part(told.get(i));
      }
    }
    return plain.page.paragraph(sheet.foot());
  }

  private void part(Part part) {
    if (part instanceof Part.Heading heading) {
      page.add(new Block.Heading(heading.level(), heading.text()));
    } else if (part instanceof Part.Prose prose) {
      page.paragraph(prose.text());
    } else if (part instanceof Part.Bullets bullets) {
      page.items(bullets.items());
    } else if (part instanceof Part.Steps steps) {
      page.items(steps.items());
    } else if (part instanceof Part.Facts facts) {
      page.items(facts.facts());
    } else if (part instanceof Part.Table table) {
      page.add(new Block.Grid(grid(table)));
    } else if (part instanceof Part.Change change) {
      page.add(new Block.Heading(3, change.heading()));
      change.sentences().forEach(page::paragraph);
    } else if (part instanceof Part.Bars bars) {
      page.items(bars.bars().stream().map(PlainSheet::item).toList());
    } else if (part instanceof Part.Working working) {
      page.items(working.lines().stream().map(PlainSheet::item).toList());
    }
  }

  private static List<List<String>> grid(Part.Table table) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(table.head());
    rows.addAll(table.rows());
    return rows;
  }

  private static boolean told(Part part) {
    return !(part instanceof Part.Figure
        || part instanceof Part.FullSize
        || part instanceof Part.NewPage
        || part instanceof Part.Fields
        || part instanceof Part.Seal
        || part instanceof Part.Links);
  }

  /** True of a heading that the next one follows at once, and that is not above it. */
  private static boolean over(Part.Heading heading, Part next) {
    return next instanceof Part.Heading other && other.level() <= heading.level();
  }

  private static Block.Item item(Part.Bar bar) {
    return new Block.Item(bar.name(), bar.used() + ", " + bar.more());
  }

  private static String clause(Part.Line line) {
    return line.clause().isEmpty() ? line.formula() : line.formula() + " (" + line.clause() + ")";
  }

  private static Block.Item item(Part.Line line) {
    return new Block.Item(line.what(), clause(line));
  }
}
