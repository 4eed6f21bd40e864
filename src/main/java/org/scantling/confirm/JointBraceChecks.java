package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.mechanics.MemberResult;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.timber.AdjustedForce;
import org.scantling.timber.Connection;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.Factor;
import org.scantling.timber.GeometryFactor;
import org.scantling.timber.GroupAction;
import org.scantling.timber.Placement;
import org.scantling.timber.PlacementRule;
import org.scantling.timber.YieldLimit;

/**
 * The bolts of a knee brace. Brace and timber lap face to face, so each bolt is in single shear,
 * along the grain of the brace and at 45 degrees to that of post or beam.
 *
 * <p>Distances between those for load along and across the grain are taken in a straight line by
 * the angle: common practice, the standard gives none for bolts at an angle (from memory).
 */
public final class JointBraceChecks {
  private static final double SLOPE_DEGREES = 45;
  private static final double SLOPE_SHARE = SLOPE_DEGREES / 90;
  private static final double SINE = Math.sqrt(0.5);
  private static final double LEAST_IN = 0.01;

  private final BracedWalk walk;
  private final JointRules rules;

  public JointBraceChecks(BracedWalk walk, JointRules rules) {
    this.walk = walk;
    this.rules = rules;
  }

  /** Every check of that way of bolting, each with its worst combination. */
  public List<Checked> of(JointFix fix) {
    WorstChecks worst = new WorstChecks("joint", rules.limits(), rules.sources());
    WorstChecks brace = new WorstChecks("brace", rules.limits(), rules.sources());
    BracedTimbers timbers = walk.timbers();
    Plane across = new Plane(walk.across(), walk.acrossCases());
    Plane along = new Plane(walk.along(), walk.alongCases());
    check(new Lap(across, timbers.post()), fix, brace, worst);
    check(new Lap(across, timbers.crossbeam()), fix, brace, worst);
    check(new Lap(along, timbers.post()), fix, brace, worst);
    check(new Lap(along, timbers.header()), fix, brace, worst);
    List<Checked> all = new ArrayList<>(brace.list());
    all.addAll(worst.list());
    return all;
  }

  private record Plane(BracedPlane plane, List<BracedCase> cases) {}

  private record Lap(Plane plane, Material other) {}

  private void check(Lap lap, JointFix fix, WorstChecks brace, WorstChecks worst) {
    GeometryFactor pulled = geometry(lap.other(), fix, rules.factors().bolts().endPulled());
    GeometryFactor pressed = geometry(lap.other(), fix, rules.factors().bolts().endPressed());
    for (BracedCase each : lap.plane().cases()) {
      double duration = rules.limits().duration().of(each.combination());
      for (String name : lap.plane().plane().braces()) {
        MemberResult member = each.all().member(name);
        double pullLb = Math.max(0, member.mostTension().amount());
        double pressLb = Math.max(0, -member.mostCompression().amount());
        AdjustedForce one = one(lap.other(), fix, duration);
        brace.add(
            "joint",
            each.combination(),
            new Connection(pullLb, one.with(pulled.asFactor()), fix.count()).check(),
            Unit.POUND);
        brace.add(
            "joint",
            each.combination(),
            new Connection(pressLb, one.with(pressed.asFactor()), fix.count()).check(),
            Unit.POUND);
      }
      for (Placement place : pulled.placements()) {
        worst.addLasting("geometry", each.combination(), place.check(), Unit.INCH);
      }
    }
  }

  private AdjustedForce one(Material other, JointFix fix, double durationFactor) {
    Dowel dowel = fix.dowel();
    Material brace = walk.timbers().brace();
    AdjustedForce value =
        YieldLimit.singleShear(dowel, member(other, dowel, SLOPE_DEGREES), member(brace, dowel, 0))
            .unadjusted()
            .with(new Factor("C_D", durationFactor))
            .with(new Factor("C_M", rules.factors().wet().sideFactor()));
    GroupAction.Row row =
        GroupAction.Row.inWood(fix.count(), spacingIn(dowel), dowel.nominalDiameterIn());
    return value.with(GroupAction.of(row, stretchLb(other), stretchLb(brace)).asFactor());
  }

  private static DowelMember member(Material material, Dowel dowel, double degrees) {
    DowelBearing bearing =
        DowelBearing.of(material.reference().specificGravityRatio(), dowel.nominalDiameterIn());
    return DowelMember.ofWood(material.section().breadthIn(), bearing, degrees);
  }

  private static double stretchLb(Material material) {
    return material.lasting(1).elasticity().psi() * material.section().areaIn2();
  }

  private double spacingIn(Dowel dowel) {
    return rules.factors().bolts().inRowAlong().fullDiameters() * dowel.nominalDiameterIn();
  }

  /**
   * The bolts sit on the centre line of the brace, about the middle of the lap; the brace is cut
   * flush with the far edge of the other timber.
   */
  private GeometryFactor geometry(Material other, JointFix fix, PlacementRule end) {
    JointFactors.BoltPlaces places = rules.factors().bolts();
    double diameterIn = fix.dowel().nominalDiameterIn();
    double reachIn = (fix.count() - 1) * spacingIn(fix.dowel()) / 2;
    double halfIn = other.section().depthIn() / 2;
    List<Placement> all = new ArrayList<>();
    all.add(end.at(Math.max(LEAST_IN, halfIn / SINE - reachIn), diameterIn));
    all.add(places.edgeAlong().at(walk.timbers().brace().section().depthIn() / 2, diameterIn));
    all.add(
        slanting(places.edgeAlong(), places.edgeLoaded())
            .at(Math.max(LEAST_IN, halfIn - reachIn * SINE), diameterIn));
    if (fix.count() > 1) {
      all.add(places.inRowAlong().at(spacingIn(fix.dowel()), diameterIn));
    }
    return new GeometryFactor(all);
  }

  private static PlacementRule slanting(PlacementRule along, PlacementRule across) {
    return new PlacementRule(
        "edge distance at a slant",
        between(along.minimumDiameters(), across.minimumDiameters()),
        between(along.fullDiameters(), across.fullDiameters()));
  }

  private static double between(double along, double across) {
    return along + SLOPE_SHARE * (across - along);
  }
}
