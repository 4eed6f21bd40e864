package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Balanced snow on a closed flat roof at this site.
 *
 * <p>What the top would carry if it were a roof without gaps; the rule base takes a share of it.
 *
 * @param groundSnowPsf p_g, psf
 * @param factors C_e, C_t and I_s
 * @param flatRoofSnowPsf p_f, psf
 * @param lowSlopeMinimumPsf p_m, psf: the least uniform snow of a closed low-slope roof (7.3.4),
 *     given as working for a top that is full of leaves or whose gaps bridge; the balanced load
 *     above does not include it
 */
public record FlatRoofSnow(
    double groundSnowPsf, SnowFactors factors, double flatRoofSnowPsf, double lowSlopeMinimumPsf)
    implements Calculated {
  private static final double GROUND_TO_ROOF = 0.7;

  /**
   * Finds the ground snow under which a flat roof carries so much.
   *
   * @param flatRoofPsf what a roof carries at an importance factor of 1, psf, zero or more
   * @param factors C_e and C_t
   * @return p_g = p_f / (0.7 C_e C_t), psf
   *     <p>Source: ASCE 7, 2016, section 7.3
   *     <p>Worked number: 40.1 psf with C_e 1 and C_t 1.2 are 47.7 psf on the ground.
   */
  public static double groundPsf(double flatRoofPsf, SnowFactors factors) {
    return Require.zeroOrMore("snow on a flat roof", flatRoofPsf, "psf")
        / (GROUND_TO_ROOF * factors.exposureFactor() * factors.thermalFactor());
  }

  public FlatRoofSnow {
    Require.zeroOrMore("ground snow", groundSnowPsf, "psf");
  }

  /**
   * Finds the flat-roof snow load.
   *
   * @param groundSnowPsf p_g, psf, zero or more
   * @param factors C_e, C_t and I_s
   * @param minimumUpToPsf ground snow up to which the low-slope minimum is the ground snow itself,
   *     20 psf in the standard
   * @return p_f = 0.7 C_e C_t I_s p_g, psf, and the low-slope minimum beside it
   * @throws IllegalArgumentException if the ground snow is negative or not finite
   *     <p>Source: ASCE 7, 2016, sections 7.3 and 7.3.4
   *     <p>Worked number: 20 psf on the ground, C_e 0.9, C_t 1.2, I_s 1.0 give 15.12 psf.
   */
  public static FlatRoofSnow of(double groundSnowPsf, SnowFactors factors, double minimumUpToPsf) {
    double flatRoofPsf =
        GROUND_TO_ROOF
            * factors.exposureFactor()
            * factors.thermalFactor()
            * factors.importanceFactor()
            * groundSnowPsf;
    double minimumPsf = factors.importanceFactor() * Math.min(groundSnowPsf, minimumUpToPsf);
    return new FlatRoofSnow(groundSnowPsf, factors, flatRoofPsf, minimumPsf);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(line());
  }

  /** The only one of them. */
  public FormulaLine line() {
    return FormulaLine.of("flat", Measure.psf(flatRoofSnowPsf))
        .with("ground", Measure.psf(groundSnowPsf))
        .with("exposureFactor", Measure.ratio(factors.exposureFactor()))
        .with("thermalFactor", Measure.ratio(factors.thermalFactor()))
        .with("importanceFactor", Measure.ratio(factors.importanceFactor()));
  }
}
