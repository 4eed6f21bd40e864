package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Check;
import org.scantling.timber.AdjustedForce;
import org.scantling.timber.Connection;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.Factor;
import org.scantling.timber.Placement;
import org.scantling.timber.ToeNail;
import org.scantling.timber.Withdrawal;
import org.scantling.timber.YieldLimit;

/**
 * What nails, screws or steel parts hold between an upper timber and a lower one, for a load of one
 * duration.
 *
 * @param pullLb against lifting
 * @param sideLb against pushing sideways
 * @param depths how deep the fasteners go and how far from an end, none for steel parts
 */
record JointHold(double pullLb, double sideLb, List<Placement> depths) {
  private static final double ACROSS_DEGREES = 90;

  JointHold {
    depths = List.copyOf(depths);
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
    return new JointHold(pullLb, sideLb * end.factor(), all);
  }

  /** Side push alone. */
  Check sideways(JointForce force) {
    return new Check(force.sideLb(), sideLb);
  }

  /** Lag screws from above, in the end grain of a post, the push across the grain of both. */
  private static JointHold lagged(
      JointFix fix, JointFactors factors, Wood wood, double durationFactor) {
    Dowel dowel = fix.dowel();
    double intoIn =
        Math.max(LEAST_IN, fix.reach().lengthIn() - wood.throughIn() - fix.reach().tipIn());
    Placement depth = factors.lagDepth().at(intoIn, dowel.nominalDiameterIn());
    AdjustedForce pull =
        Withdrawal.ofLag(
                wood.lowerRatio(),
                dowel.nominalDiameterIn(),
                Math.min(intoIn, fix.reach().threadIn()))
            .unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", factors.wet().screwPullFactor()))
            .with(new Factor("C_eg", factors.endGrain().pullFactor()));
    AdjustedForce side =
        YieldLimit.singleShear(
                dowel,
                across(intoIn, wood.lowerRatio(), dowel),
                across(wood.throughIn(), wood.upperRatio(), dowel))
            .unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", factors.wet().sideFactor()))
            .with(new Factor("C_eg", factors.endGrain().sideFactor()))
            .with(new Factor("depth", depth.factor()));
    return hold(fix, pull, side, depth);
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
    AdjustedForce side =
        YieldLimit.singleShear(
                dowel,
                across(intoIn, wood.lowerRatio(), dowel),
                across(slant.sideIn(), wood.upperRatio(), dowel))
            .unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", factors.wet().sideFactor()))
            .with(new Factor("C_tn", factors.toe().sideFactor()))
            .with(new Factor("depth", depth.factor()));
    return hold(fix, pull, side, depth);
  }

  /** A screw that does not reach the lower timber holds next to nothing, never nothing at all. */
  private static final double LEAST_IN = 0.01;

  private static DowelMember across(double lengthIn, double gravityRatio, Dowel dowel) {
    DowelBearing bearing = DowelBearing.of(gravityRatio, dowel.nominalDiameterIn());
    return DowelMember.ofWood(lengthIn, bearing, ACROSS_DEGREES);
  }

  private static JointHold hold(
      JointFix fix, AdjustedForce pull, AdjustedForce side, Placement depth) {
    return new JointHold(
        new Connection(0, pull, fix.count()).capacityLb(),
        new Connection(0, side, fix.count()).capacityLb(),
        List.of(depth));
  }
}
