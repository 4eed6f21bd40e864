package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.scantling.concurrent.Lazy;
import org.scantling.loads.LoadCombination;
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
 * along the grain of the brace and at 45 degrees to that of post or beam. Along the walk it lies on
 * whichever of post and header is broader; what is packed out over the other is taken as a gap.
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
  private final Lazy<Map<LoadCombination, Force>> across;
  private final Lazy<Map<LoadCombination, Force>> along;

  public JointBraceChecks(BracedWalk walk, JointRules rules) {
    this.walk = walk;
    this.rules = rules;
    this.across = new Lazy<>(() -> forces(walk.across()));
    this.along = new Lazy<>(() -> forces(walk.along()));
  }

  /** What a brace is bolted to. */
  public enum Timber {
    CROSSBEAM,
    HEADER,
    POST
  }

  /** Every check of that way of bolting, each with its worst combination. */
  public List<Checked> of(JointFix fix) {
    return checks(List.of(Timber.values()), fix);
  }

  /** The checks of that way of bolting where a brace laps one of its timbers. */
  public List<Checked> at(Timber timber, JointFix fix) {
    return checks(List.of(timber), fix);
  }

  private List<Checked> checks(List<Timber> timbers, JointFix fix) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    CheckEnvelope brace = new CheckEnvelope("brace", rules.limits(), rules.sources());
    for (Lap lap : laps()) {
      if (timbers.contains(lap.timber())) {
        check(lap, fix, brace, worst);
      }
    }
    List<Checked> all = new ArrayList<>(brace.list());
    all.addAll(worst.list());
    return all;
  }

  private List<Lap> laps() {
    BracedTimbers timbers = walk.timbers();
    double standsOffIn = walk.geometry().seatBreadthIn() - walk.geometry().posts().breadthIn();
    double fromPostIn = Math.max(0, standsOffIn / 2);
    double fromHeaderIn = Math.max(0, -standsOffIn / 2);
    return List.of(
        new Lap(Timber.POST, timbers.post(), across, 0, 0),
        // The bolt goes through both of a pair, which are fastened to each other.
        new Lap(Timber.CROSSBEAM, timbers.crossbeam().asOne(), across, 0, 0),
        new Lap(Timber.POST, timbers.post(), along, fromPostIn, 0),
        new Lap(Timber.HEADER, timbers.header(), along, fromHeaderIn, underCrossbeamsIn()));
  }

  /**
   * Along the walk a brace ends at the underside of the crossbeams, which hang below the top of the
   * header by their notch; cut level, it stays under a header that falls.
   */
  private double underCrossbeamsIn() {
    double fall = Math.abs(walk.timbers().fallRatio());
    double slantIn = walk.timbers().brace().section().depthIn() * SINE * fall;
    double halfIn = walk.timbers().header().section().depthIn() / 2;
    double overIn = halfIn - walk.geometry().crossbeams().notchIn() - slantIn;
    return halfIn - overIn / (1 + fall);
  }

  /** The greatest pull and push along any brace of a plane, 0 or more, in one combination. */
  private record Force(double pullLb, double pressLb) {
    Force most(Force other) {
      return new Force(Math.max(pullLb, other.pullLb), Math.max(pressLb, other.pressLb));
    }
  }

  /**
   * Where a brace laps a timber.
   *
   * @param gapIn what is packed out between the two
   * @param shortIn how far below the far edge of the other the brace is cut
   */
  private record Lap(
      Timber timber,
      Material other,
      Supplier<Map<LoadCombination, Force>> forces,
      double gapIn,
      double shortIn) {}

  private static Map<LoadCombination, Force> forces(BracedWay way) {
    Map<LoadCombination, Force> most = new EnumMap<>(LoadCombination.class);
    for (BracedCase each : way.cases()) {
      for (String name : each.reach().braces()) {
        MemberResult member = each.all().member(name);
        double pullLb = Math.max(0, member.mostTension().amount());
        double pressLb = Math.max(0, -member.mostCompression().amount());
        most.merge(each.combination(), new Force(pullLb, pressLb), Force::most);
      }
    }
    return most;
  }

  private void check(Lap lap, JointFix fix, CheckEnvelope brace, CheckEnvelope worst) {
    GeometryFactor pulled = geometry(lap, fix, rules.factors().bolts().endPulled());
    GeometryFactor pressed = geometry(lap, fix, rules.factors().bolts().endPressed());
    lap.forces()
        .get()
        .forEach(
            (combination, force) -> {
              AdjustedForce one = one(lap, fix, rules.limits().duration().of(combination));
              joint(brace, combination, force.pullLb(), one.with(pulled.asFactor()), fix);
              joint(brace, combination, force.pressLb(), one.with(pressed.asFactor()), fix);
              for (Placement place : pulled.placements()) {
                worst.addLasting("geometry", combination, place.check(), Unit.INCH);
              }
            });
  }

  private static void joint(
      CheckEnvelope brace,
      LoadCombination combination,
      double forceLb,
      AdjustedForce one,
      JointFix fix) {
    Connection bolted = new Connection(forceLb, one, fix.count());
    brace.add("joint", combination, bolted.check(), Unit.POUND);
  }

  private AdjustedForce one(Lap lap, JointFix fix, double durationFactor) {
    Material other = lap.other();
    Dowel dowel = fix.dowel();
    Material brace = walk.timbers().brace();
    AdjustedForce value =
        YieldLimit.singleShear(
                dowel, member(other, dowel, SLOPE_DEGREES), member(brace, dowel, 0), lap.gapIn())
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
   * flush with the far edge of the other timber, or short of it.
   */
  private GeometryFactor geometry(Lap lap, JointFix fix, PlacementRule end) {
    JointFactors.BoltPlaces places = rules.factors().bolts();
    double diameterIn = fix.dowel().nominalDiameterIn();
    double reachIn = (fix.count() - 1) * spacingIn(fix.dowel()) / 2;
    double halfIn = lap.other().section().depthIn() / 2;
    double toEndIn = (halfIn - lap.shortIn()) / SINE - reachIn;
    List<Placement> all = new ArrayList<>();
    all.add(end.at(Math.max(LEAST_IN, toEndIn), diameterIn));
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
