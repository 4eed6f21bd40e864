package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * One adjustment (wet service, temperature, incising) with its factor on each property.
 *
 * @param bendingFactor on Fb
 * @param tensionFactor on Ft
 * @param shearFactor on Fv
 * @param bearingFactor on Fc perpendicular
 * @param compressionFactor on Fc
 * @param elasticityFactor on E and on E min
 */
public record PropertyFactors(
    double bendingFactor,
    double tensionFactor,
    double shearFactor,
    double bearingFactor,
    double compressionFactor,
    double elasticityFactor) {
  public PropertyFactors {
    Require.positive("factor on Fb", bendingFactor, "");
    Require.positive("factor on Ft", tensionFactor, "");
    Require.positive("factor on Fv", shearFactor, "");
    Require.positive("factor on Fc_perp", bearingFactor, "");
    Require.positive("factor on Fc", compressionFactor, "");
    Require.positive("factor on E", elasticityFactor, "");
  }

  /** No adjustment: 1 on every property. */
  public static PropertyFactors none() {
    return new PropertyFactors(1, 1, 1, 1, 1, 1);
  }
}
