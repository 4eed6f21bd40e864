package org.scantling.loads;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Wind lifting and pressing the canopy.
 *
 * <p>An open top is no roof, and no figure is made for it: taking the free roof's pressures on its
 * covered share is an upper-bound choice, and a reason that uses it says so.
 *
 * @param velocityPressurePsf q_h, psf
 * @param rule G, covered share and net pressure coefficients
 * @param cases pressure on each half of the top for each load case, psf on plan area
 * @param upliftPsf the strongest lift on either half in any case, psf, zero or more
 * @param upFactor C_N of that lift, upward, zero or more
 * @param downforcePsf the strongest press on either half in any case, psf, zero or more
 * @param downFactor C_N of that press, zero or more
 */
public record FreeRoofWind(
    double velocityPressurePsf,
    FreeRoofRule rule,
    List<Pressures> cases,
    double upliftPsf,
    double upFactor,
    double downforcePsf,
    double downFactor)
    implements Calculated {
  /**
   * Pressures of one load case, plus downward.
   *
   * @param windwardPsf on the windward half, psf
   * @param leewardPsf on the leeward half, psf
   */
  public record Pressures(double windwardPsf, double leewardPsf) {
    /** Mean over the whole top, psf, plus downward. */
    public double meanPsf() {
      return (windwardPsf + leewardPsf) / 2;
    }
  }

  public FreeRoofWind {
    cases = List.copyOf(cases);
  }

  /**
   * Finds lift and press of the wind on an open top.
   *
   * @param velocityPressurePsf q_h at the top, psf, zero or more
   * @param rule G, covered share and net pressure coefficients
   * @return p = q_h G C_N × covered share for each case and half, psf of plan area
   * @throws IllegalArgumentException if the velocity pressure is negative or not finite
   *     <p>Source: ASCE 7, 2016, section 27.3.2; the covered share is common practice
   *     <p>Worked number: q 16 psf, G 0.85, covered share 0.5 and C_N −1.1 give 7.48 psf of lift.
   */
  public static FreeRoofWind on(double velocityPressurePsf, FreeRoofRule rule) {
    Require.zeroOrMore("velocity pressure", velocityPressurePsf, "psf");
    double perCoefficientPsf = velocityPressurePsf * rule.gustFactor() * rule.coveredRatio();
    List<Pressures> cases = new ArrayList<>();
    double upFactor = 0;
    double downFactor = 0;
    for (NetPressureCoefficients given : rule.cases()) {
      cases.add(
          new Pressures(
              perCoefficientPsf * given.windwardFactor(),
              perCoefficientPsf * given.leewardFactor()));
      upFactor = Math.max(upFactor, -Math.min(given.windwardFactor(), given.leewardFactor()));
      downFactor = Math.max(downFactor, Math.max(given.windwardFactor(), given.leewardFactor()));
    }
    return new FreeRoofWind(
        velocityPressurePsf,
        rule,
        cases,
        perCoefficientPsf * upFactor,
        upFactor,
        perCoefficientPsf * downFactor,
        downFactor);
  }

  /**
   * Finds the lift on a part near a corner, where the wind sucks harder.
   *
   * @param part how hard it sucks there
   * @return p = q_h G C_N × covered share, not under the lift of the whole top
   *     <p>Source: ASCE 7, 2016, section 30.8; the covered share is common practice
   *     <p>Worked number: q 16 psf, G 0.85, covered share 0.5 and C_N 2.98 give 20.26 psf.
   */
  public CornerWind atCorner(RoofEdgeZone.Part part) {
    double partPsf =
        velocityPressurePsf * rule.gustFactor() * rule.coveredRatio() * part.meanFactor();
    boolean harder = partPsf > upliftPsf;
    return new CornerWind(
        this, part, harder, harder ? part.meanFactor() : upFactor, harder ? partPsf : upliftPsf);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(line("uplift", upliftPsf, upFactor), line("press", downforcePsf, downFactor));
  }

  /** A pressure and the coefficient it comes of. */
  FormulaLine line(String id, double pressurePsf, double factor) {
    return FormulaLine.of(id, Measure.psf(pressurePsf))
        .with("pressure", Measure.psf(velocityPressurePsf))
        .with("gust", Measure.ratio(rule.gustFactor()))
        .with("coefficient", Measure.ratio(factor))
        .with("covered", Measure.ratio(rule.coveredRatio()));
  }
}
