package org.scantling.tables;

import java.util.stream.Stream;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Source;

/**
 * By what whole structures are compared. The rows stand in the order in which they are asked who is
 * best.
 *
 * @param id what is counted
 * @param step what differs by less than this is alike, above 0
 * @param names true where the best at it is shown
 * @param worth by how much less or more than the proposed one it must be to be shown for it; 0
 *     where anything is worth it
 * @param worthRatio the same as a share of what the proposed one has
 * @param statement what it counts, in trade words
 */
public record OptionCountRow(
    String id,
    double step,
    boolean names,
    double worth,
    double worthRatio,
    String statement,
    Source source,
    String note)
    implements TableRow {

  static OptionCountRow read(Row row) {
    row.oneOf(
        "id", Stream.of(OptionMeasure.values()).map(OptionMeasure::id).toArray(String[]::new));
    return new OptionCountRow(
        row.text("id"),
        row.positive("step"),
        row.yes("names"),
        row.optional("worth").isEmpty() ? 0 : row.notNegative("worth"),
        row.optional("worth_share").isEmpty() ? 0 : row.share("worth_share"),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }

  /** Above 0 where the first is the better one; 0 where both come to as many whole steps. */
  public int better(double one, double other) {
    return measure().better(Math.round(one / step), Math.round(other / step));
  }

  /** True where one differs from the other by enough to be shown for it. */
  public boolean worthIt(double one, double proposed) {
    double apart = Math.abs(one - proposed);
    return apart >= worth && apart >= worthRatio * Math.abs(proposed);
  }

  public OptionMeasure measure() {
    return OptionMeasure.of(id);
  }
}
