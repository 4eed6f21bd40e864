package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * How a small thing is packed.
 *
 * @param id the fastener, or what else it is
 * @param count pieces, or feet, in a pack
 * @param words what the pack is called
 * @param metricCount the same where the yard sells metric packs
 * @param metricWords what such a pack is called
 */
public record PackRow(
    String id,
    int count,
    String words,
    int metricCount,
    String metricWords,
    Source source,
    String note)
    implements TableRow {

  static PackRow read(Row row) {
    return new PackRow(
        row.text("id"),
        (int) row.positive("count"),
        row.text("words"),
        (int) row.optionalNumber("metric_count").orElse(row.positive("count")),
        row.optional("metric_words").isEmpty() ? row.text("words") : row.optional("metric_words"),
        row.source(),
        row.optional("note"));
  }
}
