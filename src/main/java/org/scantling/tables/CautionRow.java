package org.scantling.tables;

import java.util.Locale;
import org.scantling.reasons.Severity;
import org.scantling.reasons.Source;

/**
 * Something a person must be told.
 *
 * @param occasion {@code always}, a question and its answer, a wish of the site file, or a rule
 *     that was relied on
 * @param severity how much it matters to somebody's safety
 * @param text what they are told
 */
public record CautionRow(
    String id, String occasion, Severity severity, String text, Source source, String note)
    implements TableRow {
  static CautionRow read(Row row) {
    return new CautionRow(
        row.text("id"),
        row.text("occasion"),
        Severity.valueOf(row.oneOf("severity", "note", "medium", "high").toUpperCase(Locale.ROOT)),
        row.text("text"),
        row.source(),
        row.optional("note"));
  }
}
