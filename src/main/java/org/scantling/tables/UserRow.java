package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * Who or what passes, and the room it needs.
 *
 * @param clearWidthIn free width between the rows
 * @param source of the width
 * @param headroomIn free height
 * @param headroomSource of the height
 */
public record UserRow(
    String id,
    String words,
    double clearWidthIn,
    Source source,
    double headroomIn,
    Source headroomSource,
    String note)
    implements TableRow {

  static UserRow read(Row row) {
    return new UserRow(
        row.text("id"),
        row.text("words"),
        row.positive("clear_width_in"),
        row.source(),
        row.positive("headroom_in"),
        row.source("headroom_"),
        row.optional("note"));
  }
}
