package org.scantling.confirm;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.timber.Placement;

/**
 * A joint in which the upper timber rests on the lower one and is only held against lifting and
 * against sliding: crossbeam on header, header on post.
 */
public final class JointSeatChecks {
  private final List<JointForce> forces;
  private final CutEnds cutEnds;
  private final JointHold.Wood wood;
  private final JointRules rules;

  /**
   * Where pieces of the upper timber meet.
   *
   * @param forces at one end, none where nothing is cut
   * @param toEndIn from its fasteners to the cut
   */
  private record CutEnds(List<JointForce> forces, double toEndIn) {}

  private JointSeatChecks(
      List<JointForce> forces, CutEnds cutEnds, JointHold.Wood wood, JointRules rules) {
    this.forces = List.copyOf(forces);
    this.cutEnds = cutEnds;
    this.wood = wood;
    this.rules = rules;
  }

  /** Crossbeam on header. */
  public static JointSeatChecks ofCrossbeam(
      JointForces forces, Material crossbeam, Material header, JointRules rules) {
    JointHold.Wood wood =
        new JointHold.Wood(gravity(crossbeam), gravity(header), crossbeam.section().depthIn());
    return new JointSeatChecks(forces.onCrossbeam(), new CutEnds(List.of(), 0), wood, rules);
  }

  /**
   * Header on post.
   *
   * @param toCutIn from the fasteners of a piece to its end, along the header
   */
  public static JointSeatChecks ofHeader(
      JointForces forces, Material header, Material post, double toCutIn, JointRules rules) {
    JointHold.Wood wood =
        new JointHold.Wood(gravity(header), gravity(post), forces.headerOverPostIn());
    CutEnds cutEnds = new CutEnds(forces.onCutEnd(), toCutIn);
    return new JointSeatChecks(forces.onPost(), cutEnds, wood, rules);
  }

  private static double gravity(Material material) {
    return material.reference().specificGravityRatio();
  }

  /** Lift and side push of a crossbeam. */
  public List<Checked> crossbeam(JointFix fix) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    Map<LoadCombination, JointHold> holds = new EnumMap<>(LoadCombination.class);
    for (JointForce force : forces) {
      JointHold hold = holds.computeIfAbsent(force.combination(), one -> hold(fix, one));
      worst.add("crossbeam", force.combination(), hold.together(force), Unit.POUND);
      depths(worst, force, hold);
    }
    return worst.list();
  }

  /** Side push of a header, and lift together with it. */
  public List<Checked> header(JointFix fix) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    Map<LoadCombination, JointHold> holds = new EnumMap<>(LoadCombination.class);
    for (JointForce force : forces) {
      JointHold hold = holds.computeIfAbsent(force.combination(), one -> hold(fix, one));
      worst.add("header", force.combination(), hold.sideways(force), Unit.POUND);
      worst.add("header-uplift", force.combination(), hold.together(force), Unit.POUND);
      depths(worst, force, hold);
    }
    if (fix.way() == JointFix.Way.LAGGED) {
      cutEnds.forces().forEach(force -> atCut(worst, fix, force));
    }
    return worst.list();
  }

  private void atCut(CheckEnvelope worst, JointFix fix, JointForce force) {
    Placement end =
        rules.factors().bolts().endAcross().at(cutEnds.toEndIn(), fix.dowel().nominalDiameterIn());
    JointHold hold = hold(fix, force.combination()).near(end);
    worst.add("header-cut", force.combination(), hold.together(force), Unit.POUND);
    depths(worst, force, hold);
  }

  /** What the fix holds for as long as the loads of a combination last. */
  private JointHold hold(JointFix fix, LoadCombination combination) {
    return JointHold.of(fix, rules.factors(), wood, rules.limits().duration().of(combination));
  }

  private static void depths(CheckEnvelope worst, JointForce force, JointHold hold) {
    for (Placement depth : hold.depths()) {
      worst.addLasting("geometry", force.combination(), depth.check(), Unit.INCH);
    }
  }
}
