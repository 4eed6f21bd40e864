package org.scantling.loads;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Pressure of the wind at a height, before any shape.
 *
 * @param windSpeedMph V, three-second gust, mph
 * @param height K_z for height and exposure
 * @param factors K_zt, K_d and K_e
 * @param pressurePsf q_z, psf, at the level of the wind speed (strength level for ASCE 7-10 and
 *     later maps)
 */
public record VelocityPressure(
    double windSpeedMph, HeightFactor height, WindFactors factors, double pressurePsf)
    implements Calculated {
  private static final double PSF_PER_MPH_SQUARED = 0.00256;

  public VelocityPressure {
    Require.zeroOrMore("wind speed", windSpeedMph, "mph");
  }

  /**
   * Finds the velocity pressure.
   *
   * @param windSpeedMph V, mph, zero or more
   * @param height K_z, from {@link ExposureConstants#at}
   * @param factors K_zt, K_d and K_e
   * @return q_z = 0.00256 K_z K_zt K_d K_e V², psf
   * @throws IllegalArgumentException if the speed is negative or a factor is not above zero
   *     <p>Source: ASCE 7, 2016, section 26.10.2
   *     <p>Worked number: 115 mph, K_z 0.85, K_d 0.85 give 24.46 psf.
   */
  public static VelocityPressure of(double windSpeedMph, HeightFactor height, WindFactors factors) {
    double pressurePsf =
        PSF_PER_MPH_SQUARED
            * height.factor()
            * factors.hill().topographicFactor()
            * factors.directionalityFactor()
            * factors.elevationFactor()
            * windSpeedMph
            * windSpeedMph;
    return new VelocityPressure(windSpeedMph, height, factors, pressurePsf);
  }

  /** By height, by the hill where there is one, then the pressure itself. */
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>(height.lines());
    lines.addAll(factors.hill().lines());
    lines.add(line());
    return lines;
  }

  /** The last of them. */
  public FormulaLine line() {
    return FormulaLine.of("velocity-pressure", Measure.psf(pressurePsf))
        .with("speed", Measure.mph(windSpeedMph))
        .with("heightFactor", Measure.ratio(height.factor()))
        .with("topographicFactor", Measure.ratio(factors.hill().topographicFactor()))
        .with("directionalityFactor", Measure.ratio(factors.directionalityFactor()))
        .with("elevationFactor", Measure.ratio(factors.elevationFactor()));
  }
}
