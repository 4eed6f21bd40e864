package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * A first, cautious estimate of the climate from the plant hardiness zone alone.
 *
 * @param id the number of the zone, 1 to 13
 */
public record ZoneRow(
    String id,
    double frostDepthIn,
    double groundSnowPsf,
    double windMph,
    Source source,
    String note)
    implements TableRow {

  static ZoneRow read(Row row) {
    return new ZoneRow(
        row.text("id"),
        row.positive("frost_depth_in"),
        row.notNegative("ground_snow_psf"),
        row.positive("wind_mph"),
        row.source(),
        row.optional("note"));
  }
}
