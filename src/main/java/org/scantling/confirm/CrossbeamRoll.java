package org.scantling.confirm;

import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;

/**
 * Whether a crossbeam rolls over on its headers. The cheeks of its notch slide in their own plane
 * and resist nothing, so what holds it upright is what it is fastened with, or blocks between
 * neighbours.
 *
 * <p>Wind on the face pushes at half the depth, the notch below the seat not counted; its own
 * weight holds it down as far as the wind does not lift it. Fasteners hold lift and side push too:
 * the three shares are added.
 *
 * <p>A block stands on the header between two crossbeams. The one that leans presses on its top,
 * and it turns over only if the screws at its far end let go of the header; the other way they hold
 * the crossbeam to its upper half.
 *
 * <p>Source: NDS, 2018, 3.3.3.4 asks for it; statics; the sum of shares as 12.4.2, from memory.
 */
public final class CrossbeamRoll {
  private static final String CHECK = "crossbeam.tipping";

  private final Geometry geometry;
  private final HeaderLoad each;
  private final double windOnCrossbeamLb;
  private final JointHold.Wood wood;
  private final JointRules rules;

  /**
   * @param crossbeam the crossbeams
   * @param header what they sit on
   * @param top what lies on the open top
   * @param windOnCrossbeamLb wind along the walk on one crossbeam, strength level
   */
  public CrossbeamRoll(
      Geometry geometry,
      Material crossbeam,
      Material header,
      TopLoads top,
      double windOnCrossbeamLb,
      JointRules rules) {
    this.geometry = geometry;
    this.each = CrossbeamOnHeader.of(geometry, crossbeam, top).load();
    this.windOnCrossbeamLb = windOnCrossbeamLb;
    this.wood =
        new JointHold.Wood(
            crossbeam.reference().specificGravityRatio(),
            header.reference().specificGravityRatio(),
            crossbeam.section().depthIn());
    this.rules = rules;
  }

  /**
   * Wind on the face of a crossbeam in full wind.
   *
   * @param fix what holds it to each header
   * @param blocks what holds each end of a block, none where there are no blocks
   */
  public Checked inWind(JointFix fix, Optional<JointFix> blocks) {
    LoadCombination lifting = LoadCombination.UPLIFT;
    double windFactor = lifting.factor(LoadKind.WIND);
    double upLb = windFactor * each.jointUpLb() - lifting.factor(LoadKind.DEAD) * each.deadLb();
    JointForce force = JointForce.of(lifting, upLb, windFactor * windOnCrossbeamLb / 2);
    Geometry.Crossbeams beam = geometry.crossbeams();
    double armIn = Math.max(0, beam.depthIn() / 2 - beam.notchIn());
    Check check = check(force, armIn, fix, blocks);
    return new Checked(
        CHECK,
        "crossbeam",
        lifting.id(),
        rules.limits().duration().of(lifting),
        check,
        Unit.INCH_POUND,
        rules.sources().apply(CHECK));
  }

  /**
   * A ladder that leans on the top edge of a crossbeam right over a header, without wind.
   *
   * @param pushLb sideways
   */
  public Check underLadder(double pushLb, JointFix fix, Optional<JointFix> blocks) {
    JointForce force = JointForce.of(LoadCombination.DEAD_LIVE, -each.deadLb(), pushLb);
    Geometry.Crossbeams beam = geometry.crossbeams();
    return check(force, beam.depthIn() - beam.notchIn(), fix, blocks);
  }

  private Check check(JointForce force, double armIn, JointFix fix, Optional<JointFix> blocks) {
    double breadthIn = geometry.crossbeams().breadthIn();
    double restingInLb = force.downLb() * breadthIn / 2;
    double rollInLb = Math.max(0, force.sideLb() * armIn - restingInLb);
    if (blocks.isPresent()) {
      return new Check(rollInLb, hold(blocks.get(), force).pullLb() * blockLeverIn());
    }
    JointHold hold = hold(fix, force);
    double heldInLb = RollHold.momentInLb(fix, hold, breadthIn);
    double otherShare = force.liftLb() / hold.pullLb() + force.sideLb() / hold.sideLb();
    return new Check(rollInLb + otherShare * heldInLb, heldInLb);
  }

  /** Along the header to the screws at the far end of a block, or up to those in the crossbeam. */
  private double blockLeverIn() {
    double alongIn = geometry.crossbeamGapIn() - geometry.crossbeams().breadthIn();
    double upIn = geometry.crossbeams().blockDepthIn() / 2;
    return Math.max(LEAST_IN, Math.min(alongIn, upIn));
  }

  /** Crossbeams so close that no block finds room are held by next to nothing, never by nothing. */
  private static final double LEAST_IN = 0.01;

  private JointHold hold(JointFix fix, JointForce force) {
    double duration = rules.limits().duration().of(force.combination());
    return JointHold.of(fix, rules.factors(), wood, duration);
  }
}
