package org.scantling.tables;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * The lengths in which a family of sizes is sold.
 *
 * @param market north-america or metric
 * @param stockFamily the family that the sizes table names
 * @param lengthsIn lengths, shortest first
 */
public record StockLengthRow(
    String id,
    String market,
    String stockFamily,
    List<Double> lengthsIn,
    Source source,
    String note)
    implements TableRow {

  public StockLengthRow {
    lengthsIn = List.copyOf(lengthsIn);
  }

  /** The longest that is sold. */
  public double longestIn() {
    return lengthsIn.get(lengthsIn.size() - 1);
  }

  /** The same family where other lengths of it are sold. */
  public StockLengthRow selling(List<Double> othersIn) {
    return new StockLengthRow(id, market, stockFamily, othersIn, source, note);
  }

  static StockLengthRow read(Row row) {
    List<Double> lengthsIn = row.positives("lengths_in");
    for (int i = 1; i < lengthsIn.size(); i++) {
      if (lengthsIn.get(i) <= lengthsIn.get(i - 1)) {
        throw row.refuse("lengths_in", RefusalWords.say("lengths.upward"));
      }
    }
    return new StockLengthRow(
        row.text("id"),
        row.oneOf("market", Market.NORTH_AMERICA, Market.METRIC),
        row.text("stock_family"),
        lengthsIn,
        row.source(),
        row.optional("note"));
  }
}
