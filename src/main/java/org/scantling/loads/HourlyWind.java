package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;
import org.scantling.quantity.Unit;

/**
 * The wind as Canadian tables print it: the mean of an hour, once in fifty years, as a pressure.
 *
 * @param pressurePsf q, psf, zero or more
 * @param speedMph the mean speed of that hour, mph
 * @param asSpeed true where the speed was given and the pressure worked, false the other way round
 *     <p>Source: National Building Code of Canada, 2020, Appendix C
 */
public record HourlyWind(double pressurePsf, double speedMph, boolean asSpeed)
    implements Calculated {
  private static final double AIR_KG_PER_M3 = 1.2929;
  private static final double PASCALS_IN_A_KILOPASCAL = 1000;
  private static final double PSF_PER_MPH_SQUARED = 0.00256;

  /**
   * What a Canadian frame and one of ours are multiplied with, pressure for pressure.
   *
   * @param loadFactor on the wind, 1.4
   * @param exposureFactor C_e of a low structure, 0.9
   * @param canadianGustFactor C_g, 2.0
   * @param height K_z
   * @param directionalityFactor K_d
   * @param gustFactor G
   */
  public record Frames(
      double loadFactor,
      double exposureFactor,
      double canadianGustFactor,
      HeightFactor height,
      double directionalityFactor,
      double gustFactor) {
    double canadianFactor() {
      return loadFactor * exposureFactor * canadianGustFactor;
    }

    double ownFactor() {
      return height.factor() * directionalityFactor * gustFactor;
    }
  }

  public HourlyWind {
    Require.zeroOrMore("hourly wind pressure", pressurePsf, "psf");
    Require.zeroOrMore("hourly wind speed", speedMph, "mph");
  }

  /**
   * Finds the speed behind a pressure.
   *
   * @param pressurePsf q, psf, zero or more
   * @return v = √(2 q / 1.2929 kg/m³)
   *     <p>Source: National Building Code of Canada, 2020, Appendix C
   *     <p>Worked number: 0.36 kPa (7.519 psf) is 23.6 m/s (52.8 mph).
   */
  public static HourlyWind ofPressure(double pressurePsf) {
    double pascals = Unit.PSF.toMetric(pressurePsf) * PASCALS_IN_A_KILOPASCAL;
    return new HourlyWind(
        pressurePsf, Math.sqrt(2 * pascals / AIR_KG_PER_M3) / Unit.MPH.toMetric(1), false);
  }

  /**
   * Finds the pressure of a speed.
   *
   * @param speedMph mean of an hour, mph, zero or more
   * @return q = 1.2929 kg/m³ v² / 2
   *     <p>Source: National Building Code of Canada, 2020, Appendix C
   *     <p>Worked number: 23.6 m/s (52.8 mph) is 0.36 kPa (7.52 psf).
   */
  public static HourlyWind ofSpeed(double speedMph) {
    double metresPerSecond = Unit.MPH.toMetric(speedMph);
    double pascals = AIR_KG_PER_M3 * metresPerSecond * metresPerSecond / 2;
    double psf = pascals / PASCALS_IN_A_KILOPASCAL / Unit.PSF.toMetric(1);
    return new HourlyWind(psf, speedMph, true);
  }

  /**
   * Finds the strength-level gust that presses as hard on a low open frame as this wind does by its
   * own code.
   *
   * @param frames the factors of both codes
   * @return V with 0.00256 K_z K_d G V² = 1.4 C_e C_g q, mph
   *     <p>Source: National Building Code of Canada, 2020, 4.1.7.3; ASCE 7, 2016, section 26.10
   *     <p>Worked number: 0.36 kPa with 1.4, 0.9, 2.0 against 0.85, 0.85, 0.85 is 109.8 mph.
   */
  public StrengthGust.OfPressure equalGust(Frames frames) {
    double square =
        frames.canadianFactor() * pressurePsf / (PSF_PER_MPH_SQUARED * frames.ownFactor());
    return new StrengthGust.OfPressure(this, frames, Math.sqrt(square));
  }

  /** The speed of a pressure that was given, or the pressure of a speed. */
  @Override
  public List<FormulaLine> lines() {
    Measure pressure = Measure.psfFromKpa(pressurePsf);
    Measure speed = Measure.mph(speedMph);
    return List.of(
        asSpeed
            ? FormulaLine.of("hourly-pressure", pressure).with("given", speed)
            : FormulaLine.of("hourly-speed", speed).with("hourly", pressure));
  }
}
