package org.scantling.tables;

import org.scantling.reasons.Source;

/**
 * How open to the wind a site is.
 *
 * @param id B, C or D
 * @param alphaFactor exponent of the wind profile
 * @param gradientHeightFt height above which the ground is not felt
 * @param leastHeightFt height below which the profile stays the same
 * @param snowExposureFactor Ce of a partially exposed site
 * @param snowSource of that factor
 */
public record ExposureRow(
    String id,
    String words,
    double alphaFactor,
    double gradientHeightFt,
    double leastHeightFt,
    Source source,
    double snowExposureFactor,
    Source snowSource,
    String note)
    implements TableRow {

  static ExposureRow read(Row row) {
    return new ExposureRow(
        row.text("id"),
        row.text("words"),
        row.positive("alpha_exponent"),
        row.positive("gradient_height_ft"),
        row.positive("kz_least_height_ft"),
        row.source(),
        row.positive("snow_exposure_factor"),
        row.source("snow_"),
        row.optional("note"));
  }
}
