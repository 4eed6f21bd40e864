package org.scantling.mechanics;

/**
 * A frame member as the solver sees it: where its ends' freedoms are, which way it runs, and how
 * its end forces follow from its end movements and loads.
 *
 * <p>The beam walk counts deflection downwards for EI = 1; the member's y points up. Hence the
 * minus signs and the EI where the two meet.
 */
final class FrameElement {
  final FrameMember member;
  final int startNode;
  final int endNode;
  final double lengthIn;
  private final double cosine;
  private final double sine;
  private final ElementEnds ends;

  FrameElement(FrameMember member, int startNode, int endNode, double runIn, double riseIn) {
    this.member = member;
    this.startNode = startNode;
    this.endNode = endNode;
    this.lengthIn = Math.hypot(runIn, riseIn);
    if (!(lengthIn > 0)) {
      throw new IllegalArgumentException(
          "member " + member.name() + " has no length: its two nodes stand at the same place");
    }
    this.cosine = runIn / lengthIn;
    this.sine = riseIn / lengthIn;
    double shearFlexibility = member.stiffness().shearFlexibilityIn2();
    this.ends = new ElementEnds(lengthIn, shearFlexibility, member.hinges());
  }

  boolean holdsTurning(int node) {
    Hinges hinges = member.hinges();
    return (node == startNode && (hinges == Hinges.NONE || hinges == Hinges.END))
        || (node == endNode && (hinges == Hinges.NONE || hinges == Hinges.START));
  }

  /** Stiffness in global axes: forces at the six end freedoms from unit movements of each. */
  double[][] stiffness() {
    double[][] columns = new double[6][];
    for (int freedom = 0; freedom < 6; freedom++) {
      double[] unit = new double[6];
      unit[freedom] = 1;
      double[] local = toMember(unit);
      LineState start = startState(local, LineState.zero());
      double axial = member.stiffness().axialLb() / lengthIn * (local[3] - local[0]);
      double endMoment = start.moment + start.shear * lengthIn;
      columns[freedom] =
          toGlobal(
              new double[] {-axial, start.shear, -start.moment, axial, -start.shear, endMoment});
    }
    return columns;
  }

  /** The six end forces, in global axes, of a load on the member while its ends are held. */
  double[] held(LineLoad along, LineLoad across) {
    return along.laden() || across.laden()
        ? toGlobal(solve(new double[6], along, across).endForceArray())
        : new double[6];
  }

  /** The result of one load case, from the movements of the ends in global axes. */
  MemberResult solve(double[] movements, LineLoad along, LineLoad across) {
    double[] local = toMember(movements);
    Stations stations = across.stations();
    LineCurve curve = new LineCurve(stations, ends.shearFlexibility());
    LineState state = LineState.zero();
    if (across.laden()) {
      curve.walk(across, 0, stations.last(), state);
    }
    LineState start = startState(local, state);
    LineState end = new LineState(start.shear, start.moment, start.slope, start.deflection);
    curve.walk(across, 0, stations.last(), end);
    AxialCurve axial = new AxialCurve(stations);
    double free = along.laden() ? axial.walk(along, 0) : 0;
    double stretch = member.stiffness().axialLb() * (local[3] - local[0]);
    axial.walk(along, (stretch - free) / lengthIn);
    double[] forces = {
      -axial.start(), start.shear, -start.moment, axial.end(), -end.shear, end.moment
    };
    return new MemberResult(curve, axial, forces, member.stiffness().bendingLbIn2());
  }

  private LineState startState(double[] local, LineState free) {
    double bending = member.stiffness().bendingLbIn2();
    LineState start = new LineState(0, 0, -bending * local[2], -bending * local[1]);
    LineState end = new LineState(0, 0, -bending * local[5], -bending * local[4]);
    return ends.startState(start, end, free);
  }

  /** A load's part along the member, from its parts in the given axes. */
  double along(Axes axes, double x, double y) {
    return axes == Axes.MEMBER ? x : cosine * x + sine * y;
  }

  /** A load's part across the member, to the right of its way (downwards of the beam walk). */
  double across(Axes axes, double x, double y) {
    return axes == Axes.MEMBER ? -y : sine * x - cosine * y;
  }

  private double[] toMember(double[] global) {
    double[] local = global.clone();
    for (int end = 0; end < 6; end += 3) {
      local[end] = cosine * global[end] + sine * global[end + 1];
      local[end + 1] = -sine * global[end] + cosine * global[end + 1];
    }
    return local;
  }

  double[] toGlobal(double[] local) {
    double[] global = local.clone();
    for (int end = 0; end < 6; end += 3) {
      global[end] = cosine * local[end] - sine * local[end + 1];
      global[end + 1] = sine * local[end] + cosine * local[end + 1];
    }
    return global;
  }
}
