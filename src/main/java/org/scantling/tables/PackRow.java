package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * How a small thing is packed.
 *
 * @param id the fastener, or what else it is
 * @param count pieces, or feet, in a pack
 * @param words what the pack is called
 */
public record PackRow(String id, int count, String words, Source source, String note)
    implements TableRow {

  static PackRow read(Row row) {
    return new PackRow(
        row.text("id"),
        (int) row.positive("count"),
        row.text("words"),
        row.source(),
        row.optional("note"));
  }
}
