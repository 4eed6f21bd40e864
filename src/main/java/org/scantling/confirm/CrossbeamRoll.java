package org.scantling.confirm;

import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
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
  static final String CHECK = "crossbeam.tipping";

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
    this.each = HeaderLoad.of(geometry, crossbeam, top);
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
    return new Checked(
        CHECK,
        "crossbeam",
        lifting.id(),
        rules.limits().duration().of(lifting),
        rolling(fix, blocks).check(),
        Unit.INCH_POUND,
        rules.sources().apply(CHECK));
  }

  /** The same with how it was worked. */
  public JointCase caseInWind(JointFix fix, Optional<JointFix> blocks) {
    Rolling rolling = rolling(fix, blocks);
    return new JointCase(CHECK, LoadCombination.UPLIFT, rolling.check(), rolling::told);
  }

  private Rolling rolling(JointFix fix, Optional<JointFix> blocks) {
    JointForce force = CrossbeamForce.lifting(each, windOnCrossbeamLb).onJoint();
    Geometry.Crossbeams beam = geometry.crossbeams();
    double armIn = Math.max(0, beam.depthIn() / 2 - beam.notchIn());
    return rolling(force, armIn, fix, blocks);
  }

  /**
   * A ladder that leans on the top edge of a crossbeam right over a header, without wind.
   *
   * @param pushLb sideways
   */
  public Check underLadder(double pushLb, JointFix fix, Optional<JointFix> blocks) {
    JointForce force = JointForce.of(LoadCombination.DEAD_LIVE, -each.deadLb(), pushLb);
    Geometry.Crossbeams beam = geometry.crossbeams();
    return rolling(force, beam.depthIn() - beam.notchIn(), fix, blocks).check();
  }

  private Rolling rolling(JointForce force, double armIn, JointFix fix, Optional<JointFix> blocks) {
    double breadthIn = geometry.crossbeams().breadthIn();
    if (blocks.isPresent()) {
      JointHold hold = hold(blocks.get(), force);
      return new Rolling(force, armIn, breadthIn, hold, Optional.empty(), blockLeverIn());
    }
    JointHold hold = hold(fix, force);
    RollHold held = RollHold.of(fix, hold, breadthIn);
    return new Rolling(force, armIn, breadthIn, hold, Optional.of(held), 0);
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
