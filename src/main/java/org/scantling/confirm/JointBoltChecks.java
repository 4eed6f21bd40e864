package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.scantling.design.Structure;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
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
import org.scantling.timber.NotchedShear;
import org.scantling.timber.Placement;
import org.scantling.timber.Rectangle;
import org.scantling.timber.YieldLimit;

/**
 * Paired headers bolted to a post: bolts in double shear, the post in the middle loaded along its
 * grain, the boards across theirs, and the shear in the boards past the bolts.
 *
 * <p>The boards need not share a load evenly. The harder worked one is held on its side of the
 * post, in one of the two planes of each bolt, so against half of what the bolt holds in both.
 */
public final class JointBoltChecks {
  private static final double ALONG_DEGREES = 0;
  private static final double ACROSS_DEGREES = 90;
  private static final double ONE_PLANE_OF_TWO = 0.5;
  private static final String STRIP = "strip";

  private final JointCrossing crossing;
  private final JointForces forces;
  private final JointRules rules;

  public JointBoltChecks(JointCrossing crossing, JointForces forces, JointRules rules) {
    this.crossing = crossing;
    this.forces = forces;
    this.rules = rules;
  }

  /** Where the bolts of that way of bolting sit, as every check here takes them. */
  public Structure.Bolts places(JointFix fix) {
    JointBoltLayout layout = layout(fix);
    return new Structure.Bolts(layout.toEdgeIn(), layout.spacingIn(), layout.rowsApartIn());
  }

  private JointBoltLayout layout(JointFix fix) {
    return JointBoltLayout.of(
        fix.count(), fix.dowel().nominalDiameterIn(), crossing, rules.factors().bolts());
  }

  /** Every check of that way of bolting, each with its worst combination. */
  public List<Checked> of(JointFix fix) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    bolted(fix)
        .forEach(
            each -> {
              LoadCombination combination = each.force().combination();
              worst.add(each.name(), combination, each.bolts().all().check(), Unit.POUND);
              for (Placement place : each.bolts().geometry().placements()) {
                worst.addLasting("geometry", combination, place.check(), Unit.INCH);
              }
            });
    splitting(fix)
        .forEach(each -> worst.add("header-shear", each.combination(), each.check(), Unit.POUND));
    return worst.list();
  }

  /** The joint force by force. */
  public Stream<JointCase> cases(JointFix fix) {
    return Stream.concat(
        bolted(fix)
            .map(
                each ->
                    new JointCase(
                        "joint." + each.name(),
                        each.force().combination(),
                        each.bolts().all().check(),
                        each::told)),
        splitting(fix));
  }

  /**
   * The bolts of a joint under one force.
   *
   * @param name of the check
   */
  private record Bolted(String name, JointForce force, JointBolts bolts) {
    List<JointLines> told() {
      List<JointLines> parts = new ArrayList<>();
      parts.add(
          JointLines.of(
              FormulaLine.of("force", Measure.pounds(bolts.all().forceLb()))
                  .with("plumb", Measure.pounds(force.downLb() + force.liftLb()))
                  .with("push", Measure.pounds(force.sideLb()))));
      parts.addAll(bolts.told());
      return parts;
    }
  }

  private Stream<Bolted> bolted(JointFix fix) {
    JointFactors.BoltPlaces places = rules.factors().bolts();
    JointBoltLayout layout = layout(fix);
    return Stream.concat(
        forces.onPost().stream()
            .map(
                force -> {
                  boolean lifted = force.liftLb() > 0;
                  GeometryFactor geometry = lifted ? layout.lifted(places) : layout.pressed(places);
                  return bolted("header", fix, layout, layout.count(), force, geometry);
                }),
        // The end of one piece, on the bolts of its side of the cut.
        forces.onCutEnd().stream()
            .map(
                force -> {
                  JointBoltLayout cut =
                      JointBoltLayout.atCut(fix.dowel().nominalDiameterIn(), crossing, places);
                  GeometryFactor geometry = cut.atCut(places, force.liftLb() > 0);
                  return bolted("header-cut", fix, cut, cut.inARow(), force, geometry);
                }));
  }

  private Bolted bolted(
      String name,
      JointFix fix,
      JointBoltLayout layout,
      int count,
      JointForce force,
      GeometryFactor geometry) {
    LateralValue lateral = lateral(fix.dowel());
    JointBolts.Piece post = new JointBolts.Piece("post", post());
    JointBolts.Piece boards = new JointBolts.Piece("board", STRIP, boards(fix.dowel()));
    GroupAction group = group(fix.dowel(), layout, post.stretch(), boards.stretch());
    AdjustedForce one =
        lateral
            .unadjusted()
            .with(new Factor("one plane", ONE_PLANE_OF_TWO))
            .with(new Factor("C_D", rules.limits().duration().of(force.combination())))
            .with(new Factor("C_M", rules.factors().wet().sideFactor()))
            .with(group.asFactor())
            .with(geometry.asFactor());
    Connection all = new Connection(forceLb(force), one, count);
    return new Bolted(name, force, new JointBolts(post, boards, lateral, group, geometry, all));
  }

  private static double forceLb(JointForce force) {
    return Math.hypot(force.downLb() + force.liftLb(), force.sideLb());
  }

  /** One bolt in double shear, post along its grain and boards across theirs. */
  private LateralValue lateral(Dowel dowel) {
    double diameterIn = dowel.nominalDiameterIn();
    double postRatio = crossing.post().reference().specificGravityRatio();
    double boardRatio = crossing.header().reference().specificGravityRatio();
    DowelMember main =
        DowelMember.ofWood(
            crossing.postIn(), DowelBearing.of(postRatio, diameterIn), ALONG_DEGREES);
    DowelMember side =
        DowelMember.ofWood(
            crossing.board().breadthIn(), DowelBearing.of(boardRatio, diameterIn), ACROSS_DEGREES);
    return YieldLimit.doubleShear(dowel, main, side);
  }

  private AxialStiffness post() {
    Rectangle section = crossing.post().section();
    return new AxialStiffness(
        crossing.post().lasting(1).elasticity(), section.breadthIn(), section.depthIn());
  }

  /** Of boards loaded across the grain only a strip as wide as the least spacing counts. */
  private AxialStiffness boards(Dowel dowel) {
    double stripIn =
        rules.factors().bolts().inRowAlong().fullDiameters() * dowel.nominalDiameterIn();
    return new AxialStiffness(
        crossing.header().lasting(1).elasticity(),
        crossing.header().plies() * crossing.board().breadthIn(),
        stripIn);
  }

  private static GroupAction group(
      Dowel dowel, JointBoltLayout layout, AxialStiffness post, AxialStiffness boards) {
    GroupAction.Row row = GroupAction.Row.inWood(2, layout.spacingIn(), dowel.nominalDiameterIn());
    return GroupAction.of(row, post, boards);
  }

  /** Shear in the boards past the bolts. */
  private Stream<JointCase> splitting(JointFix fix) {
    NotchedShear.FastenerPlace place =
        new NotchedShear.FastenerPlace(layout(fix).toEdgeIn(), crossing.toEndIn());
    return forces.headerShear().entrySet().stream()
        .map(
            each -> {
              double duration = rules.limits().duration().of(each.getKey());
              NotchedShear past =
                  NotchedShear.atFasteners(
                      each.getValue(),
                      crossing.board(),
                      place,
                      crossing.header().lasting(duration).shear());
              return new JointCase(
                  "joint.header-shear",
                  each.getKey(),
                  past.check(),
                  () -> List.of(JointLines.of(past.lines())));
            });
  }
}
