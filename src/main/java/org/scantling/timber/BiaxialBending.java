package org.scantling.timber;

import org.scantling.quantity.Check;

/**
 * How hard a beam is worked that is bent along its depth and along its breadth at once, without a
 * load along it.
 *
 * @param edgewiseTerm the share of bending along the depth
 * @param flatwiseTerm the share of bending along the breadth, raised by what the first leaves
 *     against rolling
 * @param interactionRatio the sum, cut off at {@link CombinedStress#BEYOND_BUCKLING}
 */
public record BiaxialBending(double edgewiseTerm, double flatwiseTerm, double interactionRatio) {

  /**
   * Bending both ways against the interaction limit.
   *
   * @param edgewise bending along the depth, Fb1' with C_L
   * @param flatwise bending along the breadth, Fb2' with C_fu and without C_L
   * @param stability of the beam along its depth, for F_bE
   * @return the terms and their sum
   *     <p>Source: NDS, 2018, 3.9.2 with fc = 0. Worked: 500 of 1000 psi and 300 of 1200 psi with
   *     F_bE 2000 psi give 0.5 + 0.25/(1 − 0.25²) = 0.767.
   */
  public static BiaxialBending of(Bending edgewise, Bending flatwise, BeamStability stability) {
    double rolling = edgewise.stressPsi() / stability.criticalStressPsi();
    double reserve = 1 - rolling * rolling;
    double term1 = edgewise.check().ratio();
    double term2 =
        reserve > 0 ? flatwise.check().ratio() / reserve : CombinedStress.BEYOND_BUCKLING;
    return new BiaxialBending(
        term1, term2, Math.min(term1 + term2, CombinedStress.BEYOND_BUCKLING));
  }

  /** The sum of the terms against 1. */
  public Check check() {
    return new Check(interactionRatio, 1);
  }
}
