package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
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
    return worst(seats(fix), JointSeatChecks::crossbeam);
  }

  /** Side push of a header, and lift together with it. */
  public List<Checked> header(JointFix fix) {
    return worst(seats(fix), JointSeatChecks::header);
  }

  /** The joint of a crossbeam force by force. */
  public Stream<JointCase> casesOfCrossbeam(JointFix fix) {
    return seats(fix).stream().flatMap(seat -> crossbeam(seat).stream());
  }

  /** The joint of a header force by force. */
  public Stream<JointCase> casesOfHeader(JointFix fix) {
    return seats(fix).stream().flatMap(seat -> header(seat).stream());
  }

  /** A force and what holds against it; near a cut where the upper timber ends there. */
  private record Held(JointForce force, JointHold hold, boolean atCut) {
    JointCase together(String name) {
      return new JointCase(
          "joint." + name,
          force.combination(),
          hold.together(force),
          () -> hold.toldTogether(force));
    }

    JointCase sideways(String name) {
      return new JointCase(
          "joint." + name, force.combination(), hold.sideways(force), () -> hold.toldSideways());
    }
  }

  private static List<JointCase> crossbeam(Held held) {
    return List.of(held.together("crossbeam"));
  }

  private static List<JointCase> header(Held held) {
    return held.atCut()
        ? List.of(held.together("header-cut"))
        : List.of(held.sideways("header"), held.together("header-uplift"));
  }

  private List<Held> seats(JointFix fix) {
    Map<LoadCombination, JointHold> holds = new EnumMap<>(LoadCombination.class);
    List<Held> seats = new ArrayList<>();
    for (JointForce force : forces) {
      JointHold hold = holds.computeIfAbsent(force.combination(), one -> hold(fix, one));
      seats.add(new Held(force, hold, false));
    }
    if (fix.way() == JointFix.Way.LAGGED) {
      for (JointForce force : cutEnds.forces()) {
        seats.add(new Held(force, hold(fix, force.combination()).near(cutEnd(fix)), true));
      }
    }
    return seats;
  }

  private Placement cutEnd(JointFix fix) {
    return rules
        .factors()
        .bolts()
        .endAcross()
        .at(cutEnds.toEndIn(), fix.dowel().nominalDiameterIn());
  }

  private List<Checked> worst(List<Held> seats, Function<Held, List<JointCase>> checked) {
    CheckEnvelope worst = new CheckEnvelope("joint", rules.limits(), rules.sources());
    for (Held seat : seats) {
      for (JointCase each : checked.apply(seat)) {
        worst.add(each.name(), each.combination(), each.check(), Unit.POUND);
      }
      for (Placement depth : seat.hold().depths()) {
        worst.addLasting("geometry", seat.force().combination(), depth.check(), Unit.INCH);
      }
    }
    return worst.list();
  }

  /** What the fix holds for as long as the loads of a combination last. */
  private JointHold hold(JointFix fix, LoadCombination combination) {
    return JointHold.of(fix, rules.factors(), wood, rules.limits().duration().of(combination));
  }
}
