package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * Pressure of the wind at a height, before any shape.
 *
 * @param windSpeedMph V, three-second gust, mph
 * @param kzFactor K_z for height and exposure
 * @param factors K_zt, K_d and K_e
 * @param pressurePsf q_z, psf, at the level of the wind speed (strength level for ASCE 7-10 and
 *     later maps)
 */
public record VelocityPressure(
    double windSpeedMph, double kzFactor, WindFactors factors, double pressurePsf) {
  private static final double PSF_PER_MPH_SQUARED = 0.00256;

  public VelocityPressure {
    Require.zeroOrMore("wind speed", windSpeedMph, "mph");
    Require.positive("exposure coefficient K_z", kzFactor, "");
  }

  /**
   * Finds the velocity pressure.
   *
   * @param windSpeedMph V, mph, zero or more
   * @param kzFactor K_z, from {@link ExposureConstants#kzFactor} or the printed table
   * @param factors K_zt, K_d and K_e
   * @return q_z = 0.00256 K_z K_zt K_d K_e V², psf
   * @throws IllegalArgumentException if the speed is negative or a factor is not above zero
   *     <p>Source: ASCE 7, 2016, section 26.10.2
   *     <p>Worked number: 115 mph, K_z 0.85, K_d 0.85 give 24.46 psf.
   */
  public static VelocityPressure of(double windSpeedMph, double kzFactor, WindFactors factors) {
    double pressurePsf =
        PSF_PER_MPH_SQUARED
            * kzFactor
            * factors.topographicFactor()
            * factors.directionalityFactor()
            * factors.elevationFactor()
            * windSpeedMph
            * windSpeedMph;
    return new VelocityPressure(windSpeedMph, kzFactor, factors, pressurePsf);
  }
}
