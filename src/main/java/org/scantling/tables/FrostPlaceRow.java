package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * The frost depth that a place asks for.
 *
 * @param region state or province
 * @param frostDepthIn depth below ground
 * @param measuredTo bottom or top of the footing, or unstated
 */
public record FrostPlaceRow(
    String id,
    String place,
    String region,
    String country,
    double frostDepthIn,
    String measuredTo,
    Source source,
    String note)
    implements TableRow {

  static FrostPlaceRow read(Row row) {
    return new FrostPlaceRow(
        row.text("id"),
        row.text("place"),
        row.text("region"),
        row.text("country"),
        row.positive("frost_depth_in"),
        row.oneOf("measured_to", "bottom", "top", "unstated"),
        row.source(),
        row.optional("note"));
  }
}
