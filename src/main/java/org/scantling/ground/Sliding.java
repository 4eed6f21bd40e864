package org.scantling.ground;

import org.scantling.quantity.Check;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Require;

/**
 * Whether a footing slides away under the sideways push of what stands on it.
 *
 * <p>The base rubs on the soil, and the side leans on it; the code lets both be added. In clay the
 * base sticks by its area instead, but never by more than half of the dead load.
 *
 * @param forceLb sideways push, allowable-stress level, lb, zero or more
 * @param baseLb what the base holds by rubbing or sticking, lb
 * @param sideLb what the soil in front of the side holds, lb
 */
public record Sliding(double forceLb, double baseLb, double sideLb) {
  private static final double MOST_OF_DEAD_IN_CLAY = 0.5;

  public Sliding {
    Require.zeroOrMore("sideways push on the footing", forceLb, "lb");
    Require.zeroOrMore("hold of the base", baseLb, "lb");
    Require.zeroOrMore("hold of the side", sideLb, "lb");
  }

  /**
   * A footing as the push meets it.
   *
   * @param deadLb dead load on the soil, footing included and lift of the wind taken off, times the
   *     factor of the combination, lb, zero or more
   * @param contactIn2 area of the base, sq in, zero or more
   * @param depthIn depth of the side that leans on undisturbed or tamped soil, in, zero or more;
   *     leave out what frost or a gardener loosens
   * @param widthIn width of that side, in, zero or more
   */
  public record Footing(double deadLb, double contactIn2, double depthIn, double widthIn) {
    public Footing {
      Require.zeroOrMore("dead load on the footing", deadLb, "lb");
      Require.zeroOrMore("base of the footing", contactIn2, "in²");
      Require.zeroOrMore("depth of the footing's side", depthIn, "in");
      Require.zeroOrMore("width of the footing's side", widthIn, "in");
    }
  }

  /**
   * Weighs a sideways push against what base and side hold.
   *
   * @param forceLb push, allowable-stress level, lb, zero or more
   * @param footing weight, base and side
   * @param soil friction or cohesion, and lateral pressure
   * @return friction × dead load, or cohesion × area up to half the dead load; and the lateral
   *     pressure, which grows with depth, over the side
   *     <p>Source: IBC, 2018, sections 1806.3.1 and 1806.3.2, from memory
   *     <p>Worked number: 200 lb of dead load on sand (0.25), a side 12 in deep and 12 in wide at
   *     150 psf/ft hold 50 + 75 lb.
   */
  public static Sliding of(double forceLb, Footing footing, PresumptiveSoil soil) {
    double rubbingLb = soil.frictionRatio() * footing.deadLb();
    double stickingLb =
        Math.min(
            soil.cohesionPsf() * footing.contactIn2() / Inches.SQUARE_PER_SQUARE_FOOT,
            MOST_OF_DEAD_IN_CLAY * footing.deadLb());
    double deepestPsf =
        LateralResistance.tabulated(soil).pressurePsf(footing.depthIn(), /* shareRatio= */ 1);
    double sideFt2 = footing.depthIn() * footing.widthIn() / Inches.SQUARE_PER_SQUARE_FOOT;
    return new Sliding(forceLb, rubbingLb + stickingLb, deepestPsf / 2 * sideFt2);
  }

  /** Base and side together, lb. */
  public double resistanceLb() {
    return baseLb + sideLb;
  }

  /**
   * Push against hold, a ratio over 1 where the footing slides.
   *
   * @throws IllegalArgumentException if nothing at all holds the footing
   */
  public Check check() {
    return new Check(forceLb, resistanceLb());
  }
}
