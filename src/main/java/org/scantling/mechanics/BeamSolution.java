package org.scantling.mechanics;

/** Solves one load case of a continuous beam whose stiffness has been taken apart already. */
final class BeamSolution {
  private final ProfileFactor stiffness;
  private final BeamTurns turns;
  private final LineLoad load;
  private final Stations stations;
  private final int[] supports;
  private final LineCurve curve;
  private final double[] rotations;

  /**
   * One case.
   *
   * @param turns which spans turn together
   * @param supports the station of each support
   */
  BeamSolution(ProfileFactor stiffness, BeamTurns turns, LineLoad load, int[] supports) {
    this.stiffness = stiffness;
    this.turns = turns;
    this.load = load;
    this.stations = load.stations();
    this.supports = supports;
    this.curve = new LineCurve(stations, 0);
    this.rotations = new double[turns.count()];
  }

  BeamResult solve() {
    double[] over = new double[supports.length];
    for (int i = 0; i < supports.length; i++) {
      over[i] = load.takePointAt(supports[i]);
    }
    LineState[] free = new LineState[supports.length - 1];
    LineState right = rightOverhangStart();
    rotations[0] = freeWalk(0, supports[0]).moment;
    rotations[turns.count() - 1] = -right.moment;
    for (int span = 0; span < free.length; span++) {
      free[span] = freeWalk(supports[span], supports[span + 1]);
      addFixedEndMoments(span, free[span]);
    }
    stiffness.solve(rotations);
    keep(free, right);
    return new BeamResult(curve, supports, SupportForces.of(curve, supports, over));
  }

  private LineState freeWalk(int from, int to) {
    LineState state = LineState.zero();
    curve.walk(load, from, to, state);
    return state;
  }

  /** Shear and moment just right of the last support: what the right overhang hangs on it. */
  private LineState rightOverhangStart() {
    int support = supports[supports.length - 1];
    LineState free = freeWalk(support, stations.last());
    double overhang = stations.lengthIn() - stations.at(support);
    return new LineState(-free.shear, free.shear * overhang - free.moment, 0, 0);
  }

  private ElementEnds ends(int span) {
    double length = stations.at(supports[span + 1]) - stations.at(supports[span]);
    return new ElementEnds(length, 0, Hinges.NONE);
  }

  private void addFixedEndMoments(int span, LineState free) {
    LineState still = LineState.zero();
    LineState start = ends(span).startState(still, still, free);
    double length = ends(span).lengthIn();
    rotations[turns.rightOf(span)] -= start.moment;
    rotations[turns.leftOf(span + 1)] += start.moment + start.shear * length + free.moment;
  }

  private void keep(LineState[] free, LineState right) {
    LineState left = freeWalk(0, supports[0]);
    double tipSlope = rotations[0] - left.slope;
    double tipDrop = -left.deflection - tipSlope * stations.at(supports[0]);
    curve.clear();
    curve.walk(load, 0, supports[0], new LineState(0, 0, tipSlope, tipDrop));
    for (int span = 0; span < free.length; span++) {
      LineState start = new LineState(0, 0, rotations[turns.rightOf(span)], 0);
      LineState end = new LineState(0, 0, rotations[turns.leftOf(span + 1)], 0);
      LineState first = ends(span).startState(start, end, free[span]);
      curve.walk(load, supports[span], supports[span + 1], first);
    }
    right.slope = rotations[turns.count() - 1];
    curve.walk(load, supports[supports.length - 1], stations.last(), right);
  }
}
