package org.scantling.loads;

/**
 * The site's own factors on wind pressure, besides height and exposure.
 *
 * @param topographicFactor K_zt, 1.0 on flat ground, above zero
 * @param directionalityFactor K_d, above zero
 * @param elevationFactor K_e, 1.0 at sea level, above zero
 *     <p>Source: ASCE 7, 2016, sections 26.6, 26.8 and 26.9
 */
public record WindFactors(
    double topographicFactor, double directionalityFactor, double elevationFactor) {
  public WindFactors {
    Argument.positive("topographic factor K_zt", topographicFactor);
    Argument.positive("directionality factor K_d", directionalityFactor);
    Argument.positive("elevation factor K_e", elevationFactor);
  }
}
