package org.scantling.tables;

import org.scantling.quantity.Measure;
import org.scantling.reasons.Source;

/**
 * One number of the wind load, for a band of solid share or of length over height where it has one.
 *
 * @param measure the number with its unit
 * @param ratio the band for which it holds
 * @param statement what it says, in trade words
 */
public record WindRow(
    String id, Measure measure, Band ratio, String statement, Source source, String note)
    implements TableRow {

  static WindRow read(Row row) {
    return new WindRow(
        row.text("id"),
        row.measure(),
        row.band("from_ratio", "to_ratio"),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }

  /** The bare number, in the unit of {@link #measure()}. */
  public double amount() {
    return measure.amount();
  }
}
