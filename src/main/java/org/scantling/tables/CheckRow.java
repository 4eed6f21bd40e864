package org.scantling.tables;

import org.scantling.quantity.Unit;
import org.scantling.reasons.Source;

/**
 * A structural check: how hard a thing may be worked, and how it is told.
 *
 * @param limitRatio greatest demand over capacity
 * @param unit of demand and capacity
 * @param nature what it keeps from happening
 * @param clientWords what passing means to the client
 * @param builderWords what is checked, for the builder
 */
public record CheckRow(
    String id,
    double limitRatio,
    Unit unit,
    CheckNature nature,
    String clientWords,
    String builderWords,
    Source source,
    String note)
    implements TableRow {

  static CheckRow read(Row row) {
    if (row.positive("limit_ratio") > 1) {
      throw row.refuse("limit_ratio", "a number above zero and not above 1");
    }
    return new CheckRow(
        row.text("id"),
        row.positive("limit_ratio"),
        row.unit(),
        CheckNature.read(row),
        row.text("client_words"),
        row.text("builder_words"),
        row.source(),
        row.optional("note"));
  }
}
