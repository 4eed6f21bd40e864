package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.timber.AdjustedForce;
import org.scantling.timber.Connection;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.Factor;
import org.scantling.timber.LagDepth;
import org.scantling.timber.LateralValue;
import org.scantling.timber.Placement;
import org.scantling.timber.ToeNail;
import org.scantling.timber.Withdrawal;
import org.scantling.timber.YieldLimit;

/**
 * What nails, screws or steel parts hold between an upper timber and a lower one, for a load of one
 * duration.
 *
 * @param fastening how nails or screws were worked; none for steel parts
 * @param pullLb against lifting
 * @param sideLb against pushing sideways
 * @param depths how deep the fasteners go and how far from an end, none for steel parts
 */
record JointHold(
    Optional<JointFastening> fastening, double pullLb, double sideLb, List<Placement> depths) {
  private static final double ACROSS_DEGREES = 90;

  JointHold {
    depths = List.copyOf(depths);
  }

  /** Of steel parts. */
  JointHold(double pullLb, double sideLb, List<Placement> depths) {
    this(Optional.empty(), pullLb, sideLb, depths);
  }

  /**
   * The timbers of the joint.
   *
   * @param upperRatio specific gravity of the upper timber
   * @param lowerRatio specific gravity of the lower timber
   * @param throughIn wood of the upper timber above the lower one
   */
  record Wood(double upperRatio, double lowerRatio, double throughIn) {}

  /**
   * What one way of fastening holds.
   *
   * @param durationFactor C_D
   */
  static JointHold of(JointFix fix, JointFactors factors, Wood wood, double durationFactor) {
    return switch (fix.way()) {
      case LAGGED -> lagged(fix, factors, wood, durationFactor);
      case TOE_NAILED, TOE_SCREWED, HOUSED -> slanted(fix, factors, wood, durationFactor);
      case RATED -> new JointHold(fix.rated().liftLb(), fix.rated().sideLb(), List.of());
      case BOLTED ->
          throw new IllegalArgumentException(
              "a joint between an upper and a lower timber must be nailed, screwed or rated, not "
                  + fix.way());
    };
  }

  /**
   * Lift and side push together, the push counted as the lift that would use up as much.
   *
   * <p>The sum of both ratios against 1 is the rule for nails and wood screws; for lag screws it is
   * on the safe side of their Hankinson form.
   *
   * <p>Source: NDS, 2018, 12.4.2, from memory.
   */
  Check together(JointForce force) {
    return new Check(force.liftLb() + force.sideLb() * pullLb / sideLb, pullLb);
  }

  /** The same at the end of a timber, for fasteners that push sideways near it. */
  JointHold near(Placement end) {
    List<Placement> all = new ArrayList<>(depths);
    all.add(end);
    return new JointHold(fastening, pullLb, sideLb * end.factor(), all);
  }

  /** Side push alone. */
  Check sideways(JointForce force) {
    return new Check(force.sideLb(), sideLb);
  }

  /** Lag screws from above, in the end grain of a post, the push across the grain of both. */
  private static JointHold lagged(
      JointFix fix, JointFactors factors, Wood wood, double durationFactor) {
    Dowel dowel = fix.dowel();
    LagDepth reach = new LagDepth(fix.reach().lengthIn(), wood.throughIn(), fix.reach().tipIn());
    double intoIn = reach.intoIn();
    Placement depth = factors.lagDepth().at(intoIn, dowel.nominalDiameterIn());
    Withdrawal grip =
        Withdrawal.ofLag(
            wood.lowerRatio(), dowel.nominalDiameterIn(), Math.min(intoIn, fix.reach().threadIn()));
    AdjustedForce pull =
        grip.unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", factors.wet().screwPullFactor()))
            .with(new Factor("C_eg", factors.endGrain().pullFactor()));
    LateralValue lateral =
        YieldLimit.singleShear(
            dowel,
            across(intoIn, wood.lowerRatio(), dowel),
            across(wood.throughIn(), wood.upperRatio(), dowel));
    AdjustedForce side =
        lateral
            .unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", factors.wet().sideFactor()))
            .with(new Factor("C_eg", factors.endGrain().sideFactor()))
            .with(new Factor("depth", depth.factor()));
    return hold(
        new JointFastening(
            reach,
            lateral,
            depth,
            new Connection(0, side, fix.count()),
            grip,
            new Connection(0, pull, fix.count())));
  }

  /** Nails or wood screws from the side of the upper timber down into the side grain below. */
  private static JointHold slanted(
      JointFix fix, JointFactors factors, Wood wood, double durationFactor) {
    Dowel dowel = fix.dowel();
    ToeNail slant = new ToeNail(fix.reach().lengthIn());
    boolean nail = fix.way() == JointFix.Way.TOE_NAILED;
    double intoIn = slant.penetrationIn();
    Placement depth = factors.nailDepth().at(intoIn, dowel.nominalDiameterIn());
    Withdrawal grip =
        nail
            ? Withdrawal.ofNail(wood.lowerRatio(), dowel.nominalDiameterIn(), intoIn)
            : Withdrawal.ofWoodScrew(
                wood.lowerRatio(),
                dowel.nominalDiameterIn(),
                Math.min(intoIn, fix.reach().threadIn()));
    double wet = nail ? factors.wet().nailPullFactor() : factors.wet().screwPullFactor();
    AdjustedForce pull =
        grip.unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", wet))
            .with(new Factor("C_tn", factors.toe().pullFactor()));
    LateralValue lateral =
        YieldLimit.singleShear(
            dowel,
            across(intoIn, wood.lowerRatio(), dowel),
            across(slant.sideIn(), wood.upperRatio(), dowel));
    AdjustedForce side =
        lateral
            .unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", factors.wet().sideFactor()))
            .with(new Factor("C_tn", factors.toe().sideFactor()))
            .with(new Factor("depth", depth.factor()));
    return hold(
        new JointFastening(
            slant,
            lateral,
            depth,
            new Connection(0, side, fix.count()),
            grip,
            new Connection(0, pull, fix.count())));
  }

  private static DowelMember across(double lengthIn, double gravityRatio, Dowel dowel) {
    DowelBearing bearing = DowelBearing.of(gravityRatio, dowel.nominalDiameterIn());
    return DowelMember.ofWood(lengthIn, bearing, ACROSS_DEGREES);
  }

  private static JointHold hold(JointFastening fastening) {
    return new JointHold(
        Optional.of(fastening),
        fastening.pull().capacityLb(),
        fastening.side().capacityLb(),
        List.of(fastening.depth()));
  }

  /** What holds against lifting, and lift and side push together. */
  List<JointLines> toldTogether(JointForce force) {
    List<JointLines> parts = new ArrayList<>();
    parts.add(JointLines.of(force.lines()));
    parts.addAll(toldBoth());
    parts.add(
        JointLines.of(
            FormulaLine.of(
                    fastening.isPresent() ? "together" : "together-rated",
                    Measure.pounds(together(force).demand()))
                .with("lift", Measure.pounds(force.liftLb()))
                .with("push", Measure.pounds(force.sideLb()))
                .with("pull-holds", Measure.pounds(pullLb))
                .with("side-holds", Measure.pounds(sideLb))));
    return parts;
  }

  /** What holds against pushing sideways and against lifting. */
  List<JointLines> toldBoth() {
    List<JointLines> parts = new ArrayList<>(toldSideways());
    fastening.ifPresent(each -> parts.addAll(each.pulled()));
    return parts;
  }

  /** What holds against lifting alone. */
  List<JointLines> toldPull() {
    List<JointLines> parts = new ArrayList<>();
    fastening.ifPresent(
        each -> {
          parts.add(JointLines.of(each.reach().lines()));
          parts.addAll(each.pulled());
        });
    return parts;
  }

  /** What holds against pushing sideways; steel parts hold what their maker says. */
  List<JointLines> toldSideways() {
    List<JointLines> parts = new ArrayList<>();
    fastening.ifPresent(
        each -> {
          parts.addAll(each.pushed());
          if (depths.size() > 1) {
            parts.addAll(toldNear(each, depths.get(depths.size() - 1)));
          }
        });
    return parts;
  }

  private List<JointLines> toldNear(JointFastening each, Placement end) {
    return List.of(
        JointLines.of(end),
        JointLines.of(
            FormulaLine.of("near-end", Measure.pounds(sideLb))
                .with("all", Measure.pounds(each.side().capacityLb()))
                .with("end-share", Measure.ratio(end.factor()))));
  }
}
