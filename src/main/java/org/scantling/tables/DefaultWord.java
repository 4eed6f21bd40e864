package org.scantling.tables;

import org.scantling.reasons.Source;

/** A word taken where neither the site file nor the base design says. */
public record DefaultWord(String id, String word, String statement, Source source, String note)
    implements TableRow {
  static DefaultWord read(Row row) {
    return new DefaultWord(
        row.text("id"),
        row.text("word"),
        row.text("statement"),
        row.source(),
        row.optional("note"));
  }
}
