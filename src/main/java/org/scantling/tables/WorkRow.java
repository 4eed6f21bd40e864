package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * How long a piece of work takes by common practice: a row of work.csv. What comes before the first
 * dot of its id is the task that it belongs to.
 *
 * @param eachMinutes all hands together, for one of the unit
 * @param unit what is counted: a hole, a post, a cubic foot
 * @param hands how many people it takes at once
 * @param statement what is done
 */
public record WorkRow(
    String id,
    double eachMinutes,
    String unit,
    int hands,
    String statement,
    Source source,
    String note)
    implements TableRow {

  static WorkRow read(Row row) {
    return new WorkRow(
        row.text("id"),
        row.notNegative("minutes"),
        row.text("unit"),
        (int) row.positive("hands"),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }

  /** The task that it is a part of. */
  public String task() {
    return id().substring(0, id().indexOf('.'));
  }
}
