package org.scantling.timber;

import java.util.EnumMap;
import java.util.Map;
import org.scantling.quantity.Require;

/**
 * The yield-limit equations of dowel-type fasteners.
 *
 * <p>Source: NDS, 2018, Tables 12.3.1A and 12.3.1B (from memory; they reproduce printed values).
 */
public final class YieldLimit {
  private final Dowel dowel;
  private final DowelMember main;
  private final DowelMember side;

  private YieldLimit(Dowel dowel, DowelMember main, DowelMember side) {
    this.dowel = dowel;
    this.main = main;
    this.side = side;
  }

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
    YieldLimit limit = new YieldLimit(dowel, main, side);
    return gapIn > 0 ? limit.apart(gapIn) : limit.singleShear();
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
    return new YieldLimit(dowel, main, side).singleShear();
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
    return new YieldLimit(dowel, main, side).doubleShear();
  }

  private LateralValue singleShear() {
    Map<YieldMode, Double> modes = new EnumMap<>(YieldMode.class);
    modes.put(YieldMode.MAIN_CRUSHES, mainCrushesLb());
    modes.put(YieldMode.SIDE_CRUSHES, sideCrushesLb());
    modes.put(YieldMode.TILTS, tiltsLb());
    modes.put(YieldMode.BENDS_TILTING_IN_MAIN, tiltsInMainLb());
    modes.put(YieldMode.BENDS_TILTING_IN_SIDE, tiltsInSideLb());
    modes.put(YieldMode.BENDS_TWICE, bendsTwiceLb());
    return value(modes);
  }

  private LateralValue apart(double gapIn) {
    DowelGap gap = new DowelGap(dowel, main, side, gapIn);
    Map<YieldMode, Double> modes = new EnumMap<>(YieldMode.class);
    modes.put(YieldMode.MAIN_CRUSHES, mainCrushesLb());
    modes.put(YieldMode.SIDE_CRUSHES, sideCrushesLb());
    modes.put(YieldMode.TILTS, gap.tiltsLb() / reduction(3.6));
    modes.put(YieldMode.BENDS_TILTING_IN_MAIN, gap.tiltsInMainLb() / reduction(3.2));
    modes.put(YieldMode.BENDS_TILTING_IN_SIDE, gap.tiltsInSideLb() / reduction(3.2));
    modes.put(YieldMode.BENDS_TWICE, gap.bendsTwiceLb() / reduction(3.2));
    return value(modes);
  }

  private LateralValue doubleShear() {
    Map<YieldMode, Double> modes = new EnumMap<>(YieldMode.class);
    modes.put(YieldMode.MAIN_CRUSHES, mainCrushesLb());
    modes.put(YieldMode.SIDE_CRUSHES, 2 * sideCrushesLb());
    modes.put(YieldMode.BENDS_TILTING_IN_SIDE, 2 * tiltsInSideLb());
    modes.put(YieldMode.BENDS_TWICE, 2 * bendsTwiceLb());
    return value(modes);
  }

  private LateralValue value(Map<YieldMode, Double> modes) {
    return new LateralValue(modes, bearingRatio(), lengthRatio(), k1(), k2(), k3());
  }

  private double mainCrushesLb() {
    return diameterIn() * main.bearingLengthIn() * main.bearingPsi() / reduction(4);
  }

  private double sideCrushesLb() {
    return diameterIn() * side.bearingLengthIn() * side.bearingPsi() / reduction(4);
  }

  private double tiltsLb() {
    return k1() * diameterIn() * side.bearingLengthIn() * side.bearingPsi() / reduction(3.6);
  }

  private double tiltsInMainLb() {
    double forceLb = k2() * diameterIn() * main.bearingLengthIn() * main.bearingPsi();
    return forceLb / ((1 + 2 * bearingRatio()) * reduction(3.2));
  }

  private double tiltsInSideLb() {
    double forceLb = k3() * diameterIn() * side.bearingLengthIn() * main.bearingPsi();
    return forceLb / ((2 + bearingRatio()) * reduction(3.2));
  }

  private double bendsTwiceLb() {
    double product = 2 * main.bearingPsi() * dowel.bendingYieldPsi();
    double stressPsi = Math.sqrt(product / (3 * (1 + bearingRatio())));
    return diameterIn() * diameterIn() * stressPsi / reduction(3.2);
  }

  private double k1() {
    double re = bearingRatio();
    double rt = lengthRatio();
    double root = Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re);
    return (root - re * (1 + rt)) / (1 + re);
  }

  private double k2() {
    double re = bearingRatio();
    double yield = yieldTerm(main.bearingLengthIn()) * (1 + 2 * re);
    return Math.sqrt(2 * (1 + re) + yield) - 1;
  }

  private double k3() {
    double re = bearingRatio();
    double yield = yieldTerm(side.bearingLengthIn()) * (2 + re);
    return Math.sqrt(2 * (1 + re) / re + yield) - 1;
  }

  private double yieldTerm(double lengthIn) {
    double slimness = diameterIn() / lengthIn;
    return 2 * dowel.bendingYieldPsi() * slimness * slimness / (3 * main.bearingPsi());
  }

  /** R_d, for thick shanks by mode and angle, for thin ones the same in all modes. */
  private double reduction(double ofMode) {
    double steepestDegrees = Math.max(main.angleDegrees(), side.angleDegrees());
    double ofAngle = dowel.feelsTheGrain() ? 1 + 0.25 * steepestDegrees / 90 : 1;
    return (dowel.thin() ? dowel.thinReduction() : ofMode) * ofAngle;
  }

  private double diameterIn() {
    return dowel.shankDiameterIn();
  }

  private double bearingRatio() {
    return main.bearingPsi() / side.bearingPsi();
  }

  private double lengthRatio() {
    return main.bearingLengthIn() / side.bearingLengthIn();
  }
}
