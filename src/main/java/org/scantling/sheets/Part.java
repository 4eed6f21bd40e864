package org.scantling.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.drawing.Room;
import org.scantling.drawing.Sheet;
import org.scantling.print.Block;

/** A part of a sheet, whatever file it is written to. */
public sealed interface Part {

  /**
   * A heading.
   *
   * @param level 2 for a section, 3 for what stands in it; 1 is the sheet's own
   */
  record Heading(int level, String text) implements Part {}

  record Prose(Manner manner, String text) implements Part {}

  /** How a paragraph stands on the page. */
  enum Manner {
    /** The answer, before all else. */
    ANSWER,
    PLAIN,
    /** What sheet it is, or where something comes from. */
    SMALL
  }

  /**
   * A list; what a thing is about may lead it.
   *
   * @param care true for what somebody must heed
   */
  record Bullets(List<Block.Item> items, boolean care) implements Part {
    public Bullets {
      items = List.copyOf(items);
    }
  }

  /** Steps in their order, each with its number or what it is in place of one. */
  record Steps(List<Block.Item> items) implements Part {
    public Steps {
      items = List.copyOf(items);
    }
  }

  /**
   * A table. The first cell of a row says what the row is of.
   *
   * @param name what is in it
   * @param marked the row that is set off from the others, or -1
   */
  record Table(String name, List<String> head, List<List<String>> rows, int marked)
      implements Part {
    public Table {
      head = List.copyOf(head);
      rows = List.copyOf(rows);
    }
  }

  /** Numbers with their names that are read at a glance. */
  record Facts(List<Block.Item> facts) implements Part {
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /**
   * A drawing, with its notes under it.
   *
   * @param drawn lays it out for some room
   */
  record Figure(Function<Room, Sheet> drawn) implements Part {}

  /**
   * One thing that changed.
   *
   * @param picture of it before and now, where it can be drawn
   */
  record Change(String heading, Optional<Figure> picture, List<String> sentences) implements Part {
    public Change {
      sentences = List.copyOf(sentences);
    }
  }

  /** How much of its limit each thing uses, as lengths beside each other. */
  record Bars(List<Bar> bars) implements Part {
    public Bars {
      bars = List.copyOf(bars);
    }
  }

  /**
   * One of them.
   *
   * @param used the share in words
   * @param ratio 1 at the limit
   * @param more the amounts and the clause
   */
  record Bar(String name, String used, double ratio, String more) {}

  /** Lines of a calculation, each after what it reads. */
  record Working(List<Line> lines) implements Part {
    public Working {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One line of it.
   *
   * @param what is worked out
   * @param formula in symbols, then in numbers, with its result
   * @param clause where the formula comes from
   * @param unseen true where nobody has seen the clause in print
   */
  record Line(String what, String formula, String clause, boolean unseen) {}

  /** Lines to be filled in by hand; a field that is given holds its text. */
  record Fields(List<Block.Item> fields) implements Part {
    public Fields {
      fields = List.copyOf(fields);
    }
  }

  /** An empty frame for a signature or a seal. */
  record Seal(String words) implements Part {}

  /** A file that belongs to the job. */
  record Link(String href, String name, String says) {}

  record Links(List<Link> links) implements Part {
    public Links {
      links = List.copyOf(links);
    }
  }

  /**
   * A drawing that is printed at its true size, on paper only.
   *
   * @param says what to do with it
   * @param checkPt length of the line that is measured after printing
   * @param checkWords how long that must come out
   */
  record FullSize(
      String heading, List<String> says, Sheet drawing, double checkPt, String checkWords)
      implements Part {
    public FullSize {
      says = List.copyOf(says);
    }
  }

  /** On paper the next part begins a page. */
  record NewPage() implements Part {}
}
