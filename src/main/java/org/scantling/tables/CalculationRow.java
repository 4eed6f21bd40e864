package org.scantling.tables;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * One step of the working behind a load or a stress, as it can be gone over by hand.
 *
 * @param roles members or questions at whose explanation it is told
 * @param part heading under which it stands, with blanks
 * @param statement what is worked
 * @param formula in symbols, then in numbers, with the names of what goes in in braces
 * @param metric the same where a constant in it has a unit, else empty
 */
public record CalculationRow(
    String id,
    List<String> roles,
    String part,
    String statement,
    String formula,
    String metric,
    Source source,
    String note)
    implements TableRow {
  public CalculationRow {
    roles = List.copyOf(roles);
  }

  static CalculationRow read(Row row) {
    return new CalculationRow(
        row.text("id"),
        row.list("roles"),
        row.text("part"),
        row.text("statement"),
        row.text("formula"),
        row.optional("metric"),
        row.source(),
        row.optional("note"));
  }
}
