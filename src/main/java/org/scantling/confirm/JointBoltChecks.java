package org.scantling.confirm;

import java.util.List;
import org.scantling.design.Structure;
import org.scantling.loads.LoadCombination;
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
import org.scantling.timber.NotchedShear;
import org.scantling.timber.Placement;
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
    JointBoltLayout layout = layout(fix);
    for (JointForce force : forces.onPost()) {
      bolts(worst, fix.dowel(), layout, force);
    }
    for (JointForce force : forces.onCutEnd()) {
      atCut(worst, fix.dowel(), force);
    }
    forces.headerShear().forEach((combination, lb) -> shear(worst, layout, combination, lb));
    return worst.list();
  }

  private void bolts(CheckEnvelope worst, Dowel dowel, JointBoltLayout layout, JointForce force) {
    boolean lifted = force.liftLb() > 0;
    GeometryFactor geometry =
        lifted ? layout.lifted(rules.factors().bolts()) : layout.pressed(rules.factors().bolts());
    AdjustedForce one = oneLb(dowel, layout, force).with(geometry.asFactor());
    held(worst, "header", force, new Connection(forceLb(force), one, layout.count()), geometry);
  }

  /** The end of one piece, on the bolts of its side of the cut. */
  private void atCut(CheckEnvelope worst, Dowel dowel, JointForce force) {
    JointFactors.BoltPlaces places = rules.factors().bolts();
    JointBoltLayout layout = JointBoltLayout.atCut(dowel.nominalDiameterIn(), crossing, places);
    GeometryFactor geometry = layout.atCut(places, force.liftLb() > 0);
    AdjustedForce one = oneLb(dowel, layout, force).with(geometry.asFactor());
    Connection bolted = new Connection(forceLb(force), one, layout.inARow());
    held(worst, "header-cut", force, bolted, geometry);
  }

  private AdjustedForce oneLb(Dowel dowel, JointBoltLayout layout, JointForce force) {
    return singleLb(dowel)
        .with(new Factor("C_D", rules.limits().duration().of(force.combination())))
        .with(new Factor("C_M", rules.factors().wet().sideFactor()))
        .with(group(dowel, layout).asFactor());
  }

  private static double forceLb(JointForce force) {
    return Math.hypot(force.downLb() + force.liftLb(), force.sideLb());
  }

  private static void held(
      CheckEnvelope worst,
      String id,
      JointForce force,
      Connection bolted,
      GeometryFactor geometry) {
    worst.add(id, force.combination(), bolted.check(), Unit.POUND);
    for (Placement each : geometry.placements()) {
      worst.addLasting("geometry", force.combination(), each.check(), Unit.INCH);
    }
  }

  /** Half of Z of one bolt in double shear, post along its grain and boards across theirs. */
  private AdjustedForce singleLb(Dowel dowel) {
    double diameterIn = dowel.nominalDiameterIn();
    double postRatio = crossing.post().reference().specificGravityRatio();
    double boardRatio = crossing.header().reference().specificGravityRatio();
    DowelMember main =
        DowelMember.ofWood(
            crossing.postIn(), DowelBearing.of(postRatio, diameterIn), ALONG_DEGREES);
    DowelMember side =
        DowelMember.ofWood(
            crossing.board().breadthIn(), DowelBearing.of(boardRatio, diameterIn), ACROSS_DEGREES);
    return YieldLimit.doubleShear(dowel, main, side)
        .unadjusted()
        .with(new Factor("one plane", ONE_PLANE_OF_TWO));
  }

  /** Of boards loaded across the grain only a strip as wide as the least spacing counts. */
  private GroupAction group(Dowel dowel, JointBoltLayout layout) {
    double modulusPsi = crossing.header().lasting(1).elasticity().psi();
    double strip = rules.factors().bolts().inRowAlong().fullDiameters() * dowel.nominalDiameterIn();
    double postLb =
        crossing.post().lasting(1).elasticity().psi() * crossing.post().section().areaIn2();
    double boardsLb = modulusPsi * crossing.header().plies() * crossing.board().breadthIn() * strip;
    GroupAction.Row row = GroupAction.Row.inWood(2, layout.spacingIn(), dowel.nominalDiameterIn());
    return GroupAction.of(row, postLb, boardsLb);
  }

  private void shear(
      CheckEnvelope worst, JointBoltLayout layout, LoadCombination combination, double shearLb) {
    NotchedShear.FastenerPlace place =
        new NotchedShear.FastenerPlace(layout.toEdgeIn(), crossing.toEndIn());
    double duration = rules.limits().duration().of(combination);
    worst.add(
        "header-shear",
        combination,
        NotchedShear.atFasteners(
                shearLb, crossing.board(), place, crossing.header().lasting(duration).shear())
            .check(),
        Unit.POUND);
  }
}
