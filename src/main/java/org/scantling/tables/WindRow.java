package org.scantling.tables;

import org.scantling.quantity.Measure;
import org.scantling.reasons.Limit;
import org.scantling.reasons.Source;

/**
 * One number of the wind load, for a band of solid share or of length over height where it has one.
 *
 * @param measure the number with its unit
 * @param fromRatio start of the band for which it holds, included; 0 where there is none
 * @param toRatio end of the band, infinite where there is none
 * @param statement what it says, in trade words
 */
public record WindRow(
    String id,
    Measure measure,
    double fromRatio,
    double toRatio,
    String statement,
    Source source,
    String note)
    implements TableRow, Limit {

  static WindRow read(Row row) {
    return new WindRow(
        row.text("id"),
        row.measure(),
        row.optionalNumber("from_ratio").orElse(0),
        row.optionalNumber("to_ratio").orElse(Double.POSITIVE_INFINITY),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }

  /** The bare number, in the unit of {@link #measure()}. */
  @Override
  public double amount() {
    return measure.amount();
  }
}
