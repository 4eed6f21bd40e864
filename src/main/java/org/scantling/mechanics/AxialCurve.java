package org.scantling.mechanics;

/** Axial force along a frame member, tension positive, on both sides of each station. */
final class AxialCurve {
  private final Stations stations;
  private final double[] before;
  private final double[] after;

  AxialCurve(Stations stations) {
    this.stations = stations;
    this.before = new double[stations.count()];
    this.after = new double[stations.count()];
  }

  /**
   * Walks from start to end, keeping the force.
   *
   * @return the lengthening of the whole line for EA = 1
   */
  double walk(LineLoad load, double startForce) {
    double force = startForce;
    double longer = 0;
    for (int station = 0; station < stations.last(); station++) {
      double step = stations.step(station);
      before[station] = force;
      force -= load.pointAt(station);
      after[station] = force;
      longer += step * (force - load.perIn(station) * step / 2);
      force -= load.perIn(station) * step;
    }
    before[stations.last()] = force;
    after[stations.last()] = force - load.pointAt(stations.last());
    return longer;
  }

  double at(double placeIn) {
    int step = stations.stepWith(placeIn);
    double share = (placeIn - stations.at(step)) / stations.step(step);
    return after[step] + share * (before[step + 1] - after[step]);
  }

  void add(AxialCurve other, double factor) {
    for (int i = 0; i < before.length; i++) {
      before[i] += factor * other.before[i];
      after[i] += factor * other.after[i];
    }
  }

  double start() {
    return before[0];
  }

  double end() {
    return after[stations.last()];
  }

  Peak mostTension() {
    Peak peak = new Peak(0, 0);
    for (int step = 0; step < stations.last(); step++) {
      peak = peak.orMore(stations.at(step), after[step]);
      peak = peak.orMore(stations.at(step + 1), before[step + 1]);
    }
    return peak;
  }

  Peak mostCompression() {
    Peak peak = new Peak(0, 0);
    for (int step = 0; step < stations.last(); step++) {
      peak = peak.orLess(stations.at(step), after[step]);
      peak = peak.orLess(stations.at(step + 1), before[step + 1]);
    }
    return peak;
  }

  AxialCurve blank() {
    return new AxialCurve(stations);
  }
}
