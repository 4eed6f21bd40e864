package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;

/**
 * How far the top of a post sways under one combination: it bends, the more for the load that leans
 * with it, and its foot turns in the ground. That load is held against the least stiffness of the
 * timber, which makes bending grow by more than both together do by the mean.
 *
 * @param push from one direction, strength level
 * @param windFactor share of that push in the combination
 * @param bentIn sway by bending alone, and by the turning of a base on which the post stands
 * @param reserveRatio 1 − fc/FcE, what is left of the post's stiffness under its load; little or
 *     nothing where it leans over by itself
 */
record PostSway(
    LoadCombination combination,
    SidePush push,
    double windFactor,
    double bentIn,
    double reserveRatio) {
  /** Leaning has grown sway tenfold: the arithmetic of small sways has lost its meaning. */
  private static final double LEAST_RESERVE = 0.1;

  /** False where the post leans over by itself, so that no sway can be worked. */
  boolean stands() {
    return reserveRatio > LEAST_RESERVE;
  }

  Check check(double turnIn, double mostIn) {
    return new Check(leaningIn() + turnIn, mostIn);
  }

  /** What the foot may turn, at the top of the post; 0 or less where bending takes it all. */
  double leftToTurnIn(double mostIn) {
    return mostIn - leaningIn();
  }

  /** Bending with the load that leans with it. */
  double leaningIn() {
    return bentIn / reserveRatio;
  }
}
