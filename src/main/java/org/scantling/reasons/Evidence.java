package org.scantling.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * The numbers and words a rule saw when it judged, by the name its wording uses, and the table rows
 * it leaned on.
 *
 * @param seen named numbers and words, in the order the rule gave them
 * @param rows table rows whose value decided
 */
public record Evidence(List<Seen> seen, List<RowRef> rows) {
  private static final Evidence NONE = new Evidence(List.of(), List.of());

  public Evidence {
    seen = List.copyOf(seen);
    rows = List.copyOf(rows);
  }

  /** A named thing a rule saw. */
  public sealed interface Seen {
    String name();

    /** A number with its unit. */
    record Amount(String name, Measure measure) implements Seen {}

    /** A word, such as a size or a soil class. */
    record Word(String name, String text) implements Seen {}
  }

  /** A table row, by id and source. */
  public record RowRef(String id, Source source) {}

  /** The numbers that went into a line of a kernel. */
  public static Evidence of(FormulaLine line) {
    Evidence evidence = NONE;
    for (FormulaLine.Operand each : line.operands()) {
      evidence = evidence.and(each.name(), each.measure());
    }
    return evidence;
  }

  public static Evidence none() {
    return NONE;
  }

  public static Evidence saw(String name, Measure measure) {
    return NONE.and(name, measure);
  }

  public static Evidence saw(String name, String text) {
    return NONE.and(name, text);
  }

  public static Evidence by(Cited row) {
    return NONE.row(row);
  }

  public Evidence and(String name, Measure measure) {
    return with(new Seen.Amount(name, measure));
  }

  public Evidence and(String name, String text) {
    return with(new Seen.Word(name, text));
  }

  /** The same evidence with all that another holds behind it. */
  public Evidence and(Evidence other) {
    Evidence both = this;
    for (Seen each : other.seen) {
      both = both.with(each);
    }
    for (RowRef each : other.rows) {
      both = new Evidence(both.seen, joined(both.rows, each));
    }
    return both;
  }

  /** The same evidence leaning on one more table row. */
  public Evidence row(Cited row) {
    return new Evidence(seen, joined(rows, new RowRef(row.id(), row.source())));
  }

  private static List<RowRef> joined(List<RowRef> rows, RowRef one) {
    List<RowRef> more = new ArrayList<>(rows);
    more.add(one);
    return more;
  }

  public Optional<Seen> find(String name) {
    return seen.stream().filter(each -> each.name().equals(name)).findFirst();
  }

  private Evidence with(Seen one) {
    if (find(one.name()).isPresent()) {
      throw new IllegalArgumentException("evidence already holds '" + one.name() + "'");
    }
    List<Seen> more = new ArrayList<>(seen);
    more.add(one);
    return new Evidence(more, rows);
  }
}
