package org.scantling.tables;

import java.util.List;
import java.util.OptionalDouble;
import org.scantling.reasons.Source;

/**
 * Air-freezing index of counties or of a place.
 *
 * @param counties names; the one word "all", or "others" for those that no other row of the state
 *     names
 * @param freezingIndexFDays degree-days Fahrenheit, one winter in a hundred
 * @param bound value; at-most for the lowest class; local for a number that the place publishes
 * @param meanAnnualF mean yearly temperature, where published
 */
public record FreezingIndexRow(
    String id,
    String state,
    List<String> counties,
    double freezingIndexFDays,
    String bound,
    OptionalDouble meanAnnualF,
    Source source,
    String note)
    implements TableRow {

  public FreezingIndexRow {
    counties = List.copyOf(counties);
  }

  static FreezingIndexRow read(Row row) {
    return new FreezingIndexRow(
        row.text("id"),
        row.text("state"),
        row.list("counties"),
        row.positive("freezing_index_f_days"),
        row.oneOf("bound", "value", "at-most", "local"),
        row.optionalNumber("mean_annual_f"),
        row.source(),
        row.optional("note"));
  }

  /** True for the row of those counties of its state that no other row names. */
  public boolean restOfState() {
    return counties.contains("all") || counties.contains("others");
  }
}
