package org.scantling.tables;

import org.scantling.quantity.Measure;
import org.scantling.reasons.Limit;
import org.scantling.reasons.Source;

/**
 * One number that a rule reads: a row of thumb.csv, snow.csv, live.csv or shop.csv.
 *
 * @param measure the number with its unit
 * @param statement what it says, in trade words
 */
public record NumberRow(String id, Measure measure, String statement, Source source, String note)
    implements TableRow, Limit {

  static NumberRow read(Row row) {
    return new NumberRow(
        row.text("id"), row.measure(), row.text("statement"), row.source(), row.optional("note"));
  }

  /** The bare number, in the unit of {@link #measure()}. */
  @Override
  public double amount() {
    return measure.amount();
  }
}
