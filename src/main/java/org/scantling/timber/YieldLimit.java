package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * The yield-limit equations of dowel-type fasteners.
 *
 * <p>Source: NDS, 2018, Tables 12.3.1A and 12.3.1B (from memory; they reproduce printed values).
 */
public final class YieldLimit {
  private YieldLimit() {}

  /**
   * What one fastener through two pieces that do not touch carries sideways. What fills the gap is
   * taken to carry nothing, as loose packing does.
   *
   * <p>The pieces crush as they do without a gap; in every other mode the force has a longer arm.
   *
   * @param dowel the fastener
   * @param main the piece that holds its point or nut
   * @param side the piece under its head
   * @param gapIn between the two, 0 or more
   * @return all six modes and the one that governs
   *     <p>Source: AWC Technical Report 12, 2015, Table 1-1, general dowel equations with a gap
   *     (from memory; without a gap they reproduce NDS 2018, Table 12.3.1A). Worked: a 1/2 in bolt
   *     (Fyb 45 000 psi) through two 1.5 in pieces of G 0.50, along the grain, 1/2 in apart, gives
   *     389 lb in mode II, where it gives 483 lb without the gap.
   */
  public static LateralValue singleShear(
      Dowel dowel, DowelMember main, DowelMember side, double gapIn) {
    Require.zeroOrMore("gap between the pieces", gapIn, "in");
    YieldEquations equations = YieldEquations.of(dowel, main, side, gapIn);
    return new LateralValue(equations, false, equations.singleShear());
  }

  /**
   * What one fastener through two pieces carries sideways.
   *
   * @param dowel the fastener
   * @param main the piece that holds its point or nut
   * @param side the piece under its head
   * @return all six modes and the one that governs
   *     <p>Source: NDS, 2018, 12.3.1. Worked: a 1/2 in bolt (Fyb 45 000 psi) through two 1.5 in
   *     pieces of G 0.50, along the grain, gives 483 lb in mode II.
   */
  public static LateralValue singleShear(Dowel dowel, DowelMember main, DowelMember side) {
    return singleShear(dowel, main, side, 0);
  }

  /**
   * What one fastener through a main piece between two equal side pieces carries sideways.
   *
   * @param dowel the fastener
   * @param main the middle piece
   * @param side one of the outer pieces, the thinner or weaker
   * @return the four modes that can happen and the one that governs
   *     <p>Source: NDS, 2018, 12.3.1. Worked: a 1/2 in bolt (Fyb 45 000 psi) through 1.5 + 3.5 +
   *     1.5 in of G 0.50, along the grain, gives 1230 lb in mode IIIs.
   */
  public static LateralValue doubleShear(Dowel dowel, DowelMember main, DowelMember side) {
    YieldEquations equations = YieldEquations.of(dowel, main, side, 0);
    return new LateralValue(equations, true, equations.doubleShear());
  }
}
