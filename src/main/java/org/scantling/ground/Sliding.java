package org.scantling.ground;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;
import org.scantling.quantity.Unit;

/**
 * Whether a footing slides away under the sideways push of what stands on it.
 *
 * <p>The base rubs on the soil, and the side leans on it; the code lets both be added. In clay the
 * base sticks by its area instead, but never by more than half of the dead load.
 *
 * @param forceLb sideways push, allowable-stress level, lb, zero or more
 * @param footing as the push meets it
 * @param soil friction or cohesion
 * @param rubbingLb what the base holds by rubbing, lb
 * @param stickingLb what it holds by sticking, lb
 * @param deepest sideways pressure at the bottom of the side
 * @param sideLb what the soil in front of the side holds, lb
 */
public record Sliding(
    double forceLb,
    Footing footing,
    PresumptiveSoil soil,
    double rubbingLb,
    double stickingLb,
    SoilPressure deepest,
    double sideLb)
    implements Calculated {
  private static final double MOST_OF_DEAD_IN_CLAY = 0.5;

  public Sliding {
    Require.zeroOrMore("sideways push on the footing", forceLb, "lb");
    Require.zeroOrMore("hold of the base", rubbingLb + stickingLb, "lb");
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
    SoilPressure deepest =
        LateralResistance.tabulated(soil).at(footing.depthIn(), /* shareRatio= */ 1);
    double sideFt2 = footing.depthIn() * footing.widthIn() / Inches.SQUARE_PER_SQUARE_FOOT;
    double sideLb = deepest.pressurePsf() / 2 * sideFt2;
    return new Sliding(forceLb, footing, soil, rubbingLb, stickingLb, deepest, sideLb);
  }

  /** What the base holds by rubbing or sticking, lb. */
  public double baseLb() {
    return rubbingLb + stickingLb;
  }

  /** Base and side together, lb. */
  public double resistanceLb() {
    return baseLb() + sideLb;
  }

  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(soil.cohesionPsf() > 0 ? sticking() : rubbing());
    lines.add(
        FormulaLine.of("side", Measure.pounds(sideLb))
            .with("lateral", new Measure(soil.lateralPsfPerFt(), Unit.PSF_PER_FOOT))
            .with("counted", new Measure(deepest.countedFt(), Unit.FOOT))
            .with("depth", Measure.feet(footing.depthIn()))
            .with("hole", Measure.feet(footing.widthIn())));
    lines.add(
        FormulaLine.of("slide-hold", Measure.pounds(resistanceLb()))
            .with("base", Measure.pounds(baseLb()))
            .with("side", Measure.pounds(sideLb)));
    return lines;
  }

  private FormulaLine rubbing() {
    return FormulaLine.of("rubbing", Measure.pounds(rubbingLb))
        .with("friction", Measure.ratio(soil.frictionRatio()))
        .with("pressed", Measure.pounds(footing.deadLb()));
  }

  private FormulaLine sticking() {
    Measure pressed = Measure.pounds(footing.deadLb());
    Measure cohesion = Measure.psf(soil.cohesionPsf());
    Measure area = Measure.squareFeet(footing.contactIn2());
    boolean half = stickingLb >= MOST_OF_DEAD_IN_CLAY * footing.deadLb();
    return FormulaLine.of(half ? "sticking-half" : "sticking", Measure.pounds(stickingLb))
        .with("pressed", pressed)
        .with("cohesion", cohesion)
        .with("area", area);
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
