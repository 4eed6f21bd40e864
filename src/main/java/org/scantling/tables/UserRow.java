package org.scantling.tables;

import org.scantling.reasons.Cited;
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

  /** The height that it needs, with its own source. */
  public Cited height() {
    return new Height(id, headroomSource);
  }

  private record Height(String id, Source source) implements Cited {}

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
