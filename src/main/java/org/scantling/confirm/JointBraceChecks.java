package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.scantling.concurrent.Lazy;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.MemberResult;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.timber.AdjustedForce;
import org.scantling.timber.AxialStiffness;
import org.scantling.timber.Connection;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.Factor;
import org.scantling.timber.GeometryFactor;
import org.scantling.timber.GroupAction;
import org.scantling.timber.LateralValue;
import org.scantling.timber.Placement;
import org.scantling.timber.YieldLimit;

/**
 * The bolts of a knee brace. Brace and timber lap face to face, so each bolt is in single shear,
 * along the grain of the brace and at 45 degrees to that of post or beam. Along the walk it lies on
 * whichever of post and header is broader; what is packed out over the other is taken as a gap.
 */
public final class JointBraceChecks {
  private static final double SLOPE_DEGREES = 45;
  private static final double SINE = Math.sqrt(0.5);

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
    GeometryFactor pulled = layout(lap, fix).pulled();
    bolted(lap, fix)
        .forEach(
            each -> {
              brace.add("joint", each.combination(), each.bolts().all().check(), Unit.POUND);
              for (Placement place : pulled.placements()) {
                worst.addLasting("geometry", each.combination(), place.check(), Unit.INCH);
              }
            });
  }

  /** Every lap of a brace, force by force. */
  public Stream<JointCase> cases(JointFix fix) {
    return laps().stream()
        .flatMap(lap -> bolted(lap, fix))
        .map(
            each ->
                new JointCase(
                    "brace.joint",
                    each.combination(),
                    each.bolts().all().check(),
                    () -> each.bolts().told()));
  }

  /** The bolts of one lap under one force. */
  private record Bolted(LoadCombination combination, JointBolts bolts) {}

  /** Pulled and pressed, in every combination. */
  private Stream<Bolted> bolted(Lap lap, JointFix fix) {
    GeometryFactor pulled = layout(lap, fix).pulled();
    GeometryFactor pressed = layout(lap, fix).pressed();
    LateralValue lateral = lateral(lap, fix.dowel());
    return lap.forces().get().entrySet().stream()
        .flatMap(
            each ->
                Stream.of(
                    bolted(lap, fix, lateral, pulled, each.getKey(), each.getValue().pullLb()),
                    bolted(lap, fix, lateral, pressed, each.getKey(), each.getValue().pressLb())));
  }

  private Bolted bolted(
      Lap lap,
      JointFix fix,
      LateralValue lateral,
      GeometryFactor geometry,
      LoadCombination combination,
      double forceLb) {
    String timber = lap.timber().name().toLowerCase(Locale.ROOT);
    JointBolts.Piece other = new JointBolts.Piece(timber, stretch(lap.other()));
    JointBolts.Piece brace = new JointBolts.Piece("brace", stretch(walk.timbers().brace()));
    GroupAction group = GroupAction.of(row(lap, fix), other.stretch(), brace.stretch());
    AdjustedForce one =
        lateral
            .unadjusted()
            .with(new Factor("C_D", rules.limits().duration().of(combination)))
            .with(new Factor("C_M", rules.factors().wet().sideFactor()))
            .with(group.asFactor())
            .with(geometry.asFactor());
    Connection all = new Connection(forceLb, one, fix.count());
    return new Bolted(combination, new JointBolts(other, brace, lateral, group, geometry, all));
  }

  private GroupAction.Row row(Lap lap, JointFix fix) {
    return GroupAction.Row.inWood(
        fix.count(), layout(lap, fix).spacingIn(), fix.dowel().nominalDiameterIn());
  }

  private LateralValue lateral(Lap lap, Dowel dowel) {
    return YieldLimit.singleShear(
        dowel,
        member(lap.other(), dowel, SLOPE_DEGREES),
        member(walk.timbers().brace(), dowel, 0),
        lap.gapIn());
  }

  private static DowelMember member(Material material, Dowel dowel, double degrees) {
    DowelBearing bearing =
        DowelBearing.of(material.reference().specificGravityRatio(), dowel.nominalDiameterIn());
    return DowelMember.ofWood(material.section().breadthIn(), bearing, degrees);
  }

  private static AxialStiffness stretch(Material material) {
    return new AxialStiffness(
        material.lasting(1).elasticity(),
        material.section().breadthIn(),
        material.section().depthIn());
  }

  private JointBraceLayout layout(Lap lap, JointFix fix) {
    return new JointBraceLayout(
        rules.factors().bolts(),
        fix.count(),
        fix.dowel().nominalDiameterIn(),
        walk.timbers().brace().section().depthIn(),
        lap.other().section().depthIn(),
        lap.shortIn());
  }
}
