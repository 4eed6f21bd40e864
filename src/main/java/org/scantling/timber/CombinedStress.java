package org.scantling.timber;

import org.scantling.quantity.Check;
import org.scantling.quantity.Require;

/**
 * How hard a post is worked by load and bending together, in both directions.
 *
 * @param axialTerm (fc/Fc')²
 * @param edgewiseTerm the share of bending along the section's depth
 * @param flatwiseTerm the share of bending along its breadth
 * @param edgewiseReserve 1 − fc/F_cE1, what is left before bowing out along the depth
 * @param flatwiseReserve 1 − fc/F_cE2 − (fb1/F_bE)², the same along the breadth
 * @param interactionRatio the sum of the terms, cut off at {@link #BEYOND_BUCKLING}
 */
public record CombinedStress(
    double axialTerm,
    double edgewiseTerm,
    double flatwiseTerm,
    double edgewiseReserve,
    double flatwiseReserve,
    double interactionRatio) {
  /** The ratio that stands for a post that bows out before it is bent. */
  public static final double BEYOND_BUCKLING = Check.LEANS_OVER;

  /**
   * Load and bending in both directions against the interaction limit.
   *
   * <p>With both eccentricities 0 this is the plain form; otherwise the axial load bends the post
   * by its offset as well. Axis 1 bends along the section's depth, axis 2 along its breadth.
   *
   * @param column the post under its axial load; its depth is axis 1
   * @param edgewise bending along the depth, Fb1' with C_L
   * @param flatwise bending along the breadth, Fb2' with C_fu where it applies
   * @param stability of axis 1, for F_bE
   * @return the terms and their sum
   *     <p>Source: NDS, 2018, 3.9.2; with eccentricity 15.4.1, from memory.
   */
  public static CombinedStress of(
      Column column, BentAxis edgewise, BentAxis flatwise, BeamStability stability) {
    return of(column, column.areaIn2(), edgewise, flatwise, stability);
  }

  /**
   * The same where the post is cut: pressed and bent on what the cut leaves, while it bows out as
   * the whole post does, of which the cut is a short part.
   *
   * @param column the whole post under its axial load; its depth is axis 1
   * @param netAreaIn2 what the cut leaves, above 0
   * @param edgewise bending along the depth that is left
   * @param flatwise bending along the breadth that is left
   * @param stability of axis 1, for F_bE
   * @return the terms and their sum
   *     <p>Source: NDS, 2018, 3.9.2 and 3.1.2; with eccentricity 15.4.1, from memory.
   */
  public static CombinedStress atCut(
      Column column,
      double netAreaIn2,
      BentAxis edgewise,
      BentAxis flatwise,
      BeamStability stability) {
    Require.positive("net area", netAreaIn2, "in²");
    return of(column, netAreaIn2, edgewise, flatwise, stability);
  }

  private static CombinedStress of(
      Column column,
      double areaIn2,
      BentAxis edgewise,
      BentAxis flatwise,
      BeamStability stability) {
    double fc = column.forceLb() / areaIn2;
    double axial = fc / column.allowable().psi();
    double share1 = column.stressPsi() / column.aboutDepth().criticalStressPsi();
    double share2 = column.stressPsi() / column.aboutBreadth().criticalStressPsi();
    double offset1Psi = fc * edgewise.eccentricRatio();
    double rolling = (edgewise.bending().stressPsi() + offset1Psi) / stability.criticalStressPsi();
    double reserve1 = 1 - share1;
    double reserve2 = 1 - share2 - rolling * rolling;
    double bent1Psi = edgewise.bending().stressPsi() + offset1Psi * (1 + 0.234 * share1);
    double grown2 = 1 + 0.234 * (share2 + rolling * rolling);
    double bent2Psi = flatwise.bending().stressPsi() + fc * flatwise.eccentricRatio() * grown2;
    double term1 = term(bent1Psi, edgewise.bending(), reserve1);
    double term2 = term(bent2Psi, flatwise.bending(), reserve2);
    boolean bowsOut = !(reserve1 > 0 && reserve2 > 0);
    double sum = bowsOut ? BEYOND_BUCKLING : axial * axial + term1 + term2;
    return new CombinedStress(
        axial * axial, term1, term2, reserve1, reserve2, Math.min(sum, BEYOND_BUCKLING));
  }

  /** True where the post bows or rolls out before the bending counts. */
  public boolean bucklesFirst() {
    return interactionRatio >= BEYOND_BUCKLING;
  }

  /** The sum of the terms against 1. */
  public Check check() {
    return new Check(interactionRatio, 1);
  }

  private static double term(double bentPsi, Bending bending, double reserve) {
    return reserve > 0
        ? Math.min(BEYOND_BUCKLING, bentPsi / (bending.allowable().psi() * reserve))
        : BEYOND_BUCKLING;
  }
}
