package org.scantling.ground;

import org.scantling.quantity.Check;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Require;

/**
 * Whether a post stays down when the wind lifts the top.
 *
 * <p>Counted: the timber standing on the post, the concrete fastened to it, and the upright
 * cylinder of soil on a collar or bell wider than what is above it. Not counted: a soil cone, and
 * any grip of soil on a straight post.
 *
 * @param upliftLb wind lift on the post, strength level, lb, zero or more
 * @param timberLb weight of the structure on this post, lb, zero or more, without vines
 * @param concrete weight of the concrete
 * @param soilLb weight of the soil on the collar, lb
 * @param skinFrictionLb allowable skin friction, lb
 * @param demandLb 0.6 W, lb
 * @param resistanceLb 0.6 D plus skin friction, lb
 */
public record Uplift(
    double upliftLb,
    double timberLb,
    ConcreteWeight concrete,
    double soilLb,
    double skinFrictionLb,
    double demandLb,
    double resistanceLb) {
  private static final double DEAD_FACTOR = 0.6;
  private static final double WIND_FACTOR = 0.6;

  public Uplift {
    Require.zeroOrMore("wind uplift", upliftLb, "lb");
    Require.zeroOrMore("weight of the structure on the post", timberLb, "lb");
  }

  /**
   * Weighs the lift of the wind against what holds the post down.
   *
   * @param upliftLb strength-level lift on the post, lb, zero or more
   * @param timberLb weight of the structure on this post, lb, zero or more, without vines
   * @param footing concrete and soil
   * @param weights unit weights and skin friction
   * @return demand 0.6 W, resistance 0.6 D, and each weight in it
   * @throws IllegalArgumentException if lift or weight is negative
   *     <p>Source: ASCE 7, 2016, section 2.4.1; the soil cylinder is common practice
   *     <p>Worked number: a 12 in collar 36 in deep around a 4x4 holds 315 lb of concrete at 150
   *     pcf; with 100 lb of timber it resists 249 lb.
   */
  public static Uplift of(
      double upliftLb, double timberLb, BuriedFooting footing, BallastWeights weights) {
    ConcreteWeight concrete = ConcreteWeight.of(footing, weights.concretePcf());
    double soilLb = footing.soilIn3() * weights.soilPcf() / Inches.CUBIC_PER_CUBIC_FOOT;
    double sideIn2 = Math.PI * footing.collarDiameterIn() * footing.collarThicknessIn();
    double frictionLb = sideIn2 * weights.skinFrictionPsf() / Inches.SQUARE_PER_SQUARE_FOOT;
    return new Uplift(
        upliftLb,
        timberLb,
        concrete,
        soilLb,
        frictionLb,
        WIND_FACTOR * upliftLb,
        DEAD_FACTOR * (timberLb + concrete.weightLb() + soilLb) + frictionLb);
  }

  /** Weight of the concrete, lb. */
  public double concreteLb() {
    return concrete.weightLb();
  }

  /** All that weighs, lb: timber, concrete, and soil on a collar. */
  public double weightLb() {
    return timberLb + concreteLb() + soilLb;
  }

  /**
   * Lift against hold, a ratio over 1 where the post would come up.
   *
   * @throws IllegalArgumentException if nothing at all holds the post down
   */
  public Check check() {
    return new Check(demandLb, resistanceLb);
  }
}
