package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * How the wind grows with height over one kind of ground.
 *
 * @param alphaFactor the power-law exponent's denominator α (7.0 for exposure B, 9.5 for C, 11.5
 *     for D), above zero
 * @param gradientHeightIn z_g, in (1200, 900 and 700 ft), above zero
 *     <p>Source: ASCE 7, 2016, table 26.11-1
 * @param lowestHeightIn height below which the wind is taken as at it, in (15 ft), above zero
 *     <p>Source: ASCE 7, 2016, table 26.10-1, note 1
 */
public record ExposureConstants(
    double alphaFactor, double gradientHeightIn, double lowestHeightIn) {
  private static final double KZ_AT_GRADIENT = 2.01;

  public ExposureConstants {
    Require.positive("exposure constant alpha", alphaFactor, "");
    Require.positive("gradient height", gradientHeightIn, "in");
    Require.positive("lowest height", lowestHeightIn, "in");
    Require.atMost("lowest height", lowestHeightIn, "in", "gradient height", gradientHeightIn);
  }

  /**
   * Finds the velocity pressure exposure coefficient.
   *
   * @param heightIn height above ground, in, zero or more
   * @return K_z = 2.01 (z / z_g)^(2/α), with the height that counts
   * @throws IllegalArgumentException if the height is negative or above the gradient height
   *     <p>Source: ASCE 7, 2016, table 26.10-1
   *     <p>Worked number: exposure C at 30 ft gives 0.982.
   */
  public HeightFactor at(double heightIn) {
    Require.zeroOrMore("height above ground", heightIn, "in");
    Require.atMost("height above ground", heightIn, "in", "gradient height", gradientHeightIn);
    double countedIn = Math.max(heightIn, lowestHeightIn);
    double factor = KZ_AT_GRADIENT * Math.pow(countedIn / gradientHeightIn, 2 / alphaFactor);
    return new HeightFactor(this, countedIn, factor);
  }
}
