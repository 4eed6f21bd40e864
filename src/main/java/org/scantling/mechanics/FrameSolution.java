package org.scantling.mechanics;

import java.util.List;

/** Solves one load case of a frame whose stiffness has been taken apart already. */
final class FrameSolution {
  private final Frame frame;
  private final FrameCases cases;
  private final LineLoad[] along;
  private final LineLoad[] across;
  private final double[] nodeLoads;

  FrameSolution(Frame frame, FrameCases cases, List<FrameLoad> loads) {
    this.frame = frame;
    this.cases = cases;
    int members = frame.elements().size();
    this.along = new LineLoad[members];
    this.across = new LineLoad[members];
    for (int member = 0; member < members; member++) {
      along[member] = cases.blank(member);
      across[member] = cases.blank(member);
    }
    this.nodeLoads = new double[3 * frame.nodes().size()];
    for (FrameLoad load : loads) {
      cases.lay(load, along, across);
      if (load instanceof FrameLoad.AtNode single) {
        add(single);
      }
    }
  }

  private void add(FrameLoad.AtNode load) {
    int node = frame.node(load.node());
    boolean held = Double.isInfinite(frame.nodes().get(node).support().turningInLbPerRad());
    if (load.momentInLb() != 0 && !held && frame.freedoms().number(node, 2) == Freedoms.NONE) {
      throw new IllegalArgumentException(
          "moment at node " + load.node() + " must have a rigid joint there: all are hinged");
    }
    nodeLoads[3 * node] += load.xLb();
    nodeLoads[3 * node + 1] += load.yLb();
    nodeLoads[3 * node + 2] += load.momentInLb();
  }

  FrameResult solve() {
    int nodes = frame.nodes().size();
    double[] unknowns = new double[frame.freedoms().count()];
    gather(nodeLoads, unknowns);
    double[] endForces = new double[3 * nodes];
    for (int member = 0; member < along.length; member++) {
      FrameElement element = frame.elements().get(member);
      add(element, element.held(along[member], across[member]), endForces);
    }
    for (int i = 0; i < endForces.length; i++) {
      endForces[i] = -endForces[i];
    }
    gather(endForces, unknowns);
    frame.stiffness().solve(unknowns);
    double[] movements = new double[3 * nodes];
    for (int i = 0; i < movements.length; i++) {
      int freedom = frame.freedoms().number(i / 3, i % 3);
      movements[i] = freedom == Freedoms.NONE ? 0 : unknowns[freedom];
    }
    FrameMembers members =
        new FrameMembers.Solved(cases, along.length, member -> member(member, movements));
    return new FrameResult(frame, movements, reactions(members), members);
  }

  private void gather(double[] perNode, double[] unknowns) {
    for (int i = 0; i < perNode.length; i++) {
      int freedom = frame.freedoms().number(i / 3, i % 3);
      if (freedom != Freedoms.NONE) {
        unknowns[freedom] += perNode[i];
      }
    }
  }

  /** One member for given node movements. */
  private MemberResult member(int member, double[] movements) {
    FrameElement element = frame.elements().get(member);
    double[] six = new double[6];
    System.arraycopy(movements, 3 * element.startNode, six, 0, 3);
    System.arraycopy(movements, 3 * element.endNode, six, 3, 3);
    return element.solve(six, along[member], across[member]);
  }

  private static void add(FrameElement element, double[] global, double[] forces) {
    for (int direction = 0; direction < 3; direction++) {
      forces[3 * element.startNode + direction] += global[direction];
      forces[3 * element.endNode + direction] += global[3 + direction];
    }
  }

  /** What each support does to hold the members that end on it. */
  private double[] reactions(FrameMembers members) {
    double[] forces = new double[nodeLoads.length];
    for (int member = 0; member < along.length; member++) {
      FrameElement element = frame.elements().get(member);
      if (supported(element.startNode) || supported(element.endNode)) {
        add(element, element.toGlobal(members.of(member).endForceArray()), forces);
      }
    }
    double[] reactions = new double[forces.length];
    for (int i = 0; i < reactions.length; i++) {
      double held = frame.nodes().get(i / 3).support().stiffness(i % 3);
      reactions[i] = held > 0 ? forces[i] - nodeLoads[i] : 0;
    }
    return reactions;
  }

  private boolean supported(int node) {
    Support support = frame.nodes().get(node).support();
    return support.stiffness(0) > 0 || support.stiffness(1) > 0 || support.stiffness(2) > 0;
  }
}
