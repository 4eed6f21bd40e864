package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * The site's own factors on wind pressure, besides height and exposure.
 *
 * @param hill K_zt, of the hill or of flat ground
 * @param directionalityFactor K_d, above zero
 * @param elevationFactor K_e, 1.0 at sea level, above zero
 *     <p>Source: ASCE 7, 2016, sections 26.6, 26.8 and 26.9
 */
public record WindFactors(HillWind hill, double directionalityFactor, double elevationFactor) {
  public WindFactors {
    Require.positive("directionality factor K_d", directionalityFactor, "");
    Require.positive("elevation factor K_e", elevationFactor, "");
  }
}
