package org.scantling.loads;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Require;

/**
 * Wind lifting and pressing the canopy.
 *
 * <p>An open top is no roof, and no figure is made for it: taking the free roof's pressures on its
 * covered share is an upper-bound choice, and a reason that uses it says so.
 *
 * @param cases pressure on each half of the top for each load case, psf on plan area
 * @param upliftPsf the strongest lift on either half in any case, psf, zero or more
 * @param downforcePsf the strongest press on either half in any case, psf, zero or more
 */
public record FreeRoofWind(List<Pressures> cases, double upliftPsf, double downforcePsf) {
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
    double upliftPsf = 0;
    double downforcePsf = 0;
    for (NetPressureCoefficients given : rule.cases()) {
      double windwardPsf = perCoefficientPsf * given.windwardFactor();
      double leewardPsf = perCoefficientPsf * given.leewardFactor();
      cases.add(new Pressures(windwardPsf, leewardPsf));
      upliftPsf = Math.max(upliftPsf, -Math.min(windwardPsf, leewardPsf));
      downforcePsf = Math.max(downforcePsf, Math.max(windwardPsf, leewardPsf));
    }
    return new FreeRoofWind(cases, upliftPsf, downforcePsf);
  }
}
