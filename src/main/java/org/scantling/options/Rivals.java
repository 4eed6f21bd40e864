package org.scantling.options;

import java.util.Comparator;
import java.util.List;
import org.scantling.tables.OptionCountRow;

/** Which of two structures is the better one, by the rows of option-counts.csv. */
final class Rivals {
  /** By what is set and what room is given up, the least first. */
  static final Comparator<Trial> SETS_LEAST =
      Comparator.comparingInt((Trial each) -> each.attempt().settings().size())
          .thenComparingDouble(each -> each.attempt().concededIn())
          .thenComparing(each -> String.join(" ", each.attempt().settings()));

  private final List<OptionCountRow> rows;

  /**
   * @param rows in the order in which they are asked
   */
  Rivals(List<OptionCountRow> rows) {
    this.rows = List.copyOf(rows);
  }

  /** True where the first is worse at nothing and better at something. */
  boolean beats(Trial one, Trial other) {
    boolean better = false;
    for (OptionCountRow row : rows) {
      int compared = compared(row, one, other);
      if (compared < 0) {
        return false;
      }
      better |= compared > 0;
    }
    return better;
  }

  /** Those that no other beats, in their order. */
  List<Trial> unbeaten(List<Trial> trials) {
    return trials.stream().filter(each -> beating(each, trials).isEmpty()).toList();
  }

  /** Those that beat it. */
  List<Trial> beating(Trial trial, List<Trial> trials) {
    return trials.stream().filter(each -> beats(each, trial)).toList();
  }

  /**
   * The best at a row first; of those that are alike in it the best at the other rows in their
   * order; of those that are alike in all of them what is proposed anyway, then what sets least.
   */
  Comparator<Trial> bestFirst(OptionCountRow first) {
    Comparator<Trial> order = (one, other) -> -compared(first, one, other);
    for (OptionCountRow row : rows) {
      order = order.thenComparing((one, other) -> -compared(row, one, other));
    }
    return order.thenComparing(SETS_LEAST);
  }

  /** Above 0 where the first is better, 0 where they are alike. */
  static int compared(OptionCountRow row, Trial one, Trial other) {
    return row.better(one.measure(row.measure()), other.measure(row.measure()));
  }
}
