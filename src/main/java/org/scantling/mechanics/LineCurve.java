package org.scantling.mechanics;

import java.util.Arrays;

/**
 * Shear, moment, slope and deflection along a line, for EI = 1, exact between the stations too.
 *
 * <p>Shear is kept on both sides of each station, since it jumps at supports and point loads.
 */
final class LineCurve {
  private static final int HALVINGS = 26;

  private final Stations stations;
  private final double shearFlexibility;
  private final double[] shearBefore;
  private final double[] shearAfter;
  private final double[] moment;
  private final double[] slope;
  private final double[] deflection;

  LineCurve(Stations stations, double shearFlexibility) {
    this.stations = stations;
    this.shearFlexibility = shearFlexibility;
    int count = stations.count();
    this.shearBefore = new double[count];
    this.shearAfter = new double[count];
    this.moment = new double[count];
    this.slope = new double[count];
    this.deflection = new double[count];
  }

  /** Walks from one station to another, keeping the state at each; the state ends at the last. */
  void walk(LineLoad load, int from, int to, LineState state) {
    state.shear -= load.pointAt(from);
    for (int station = from; station < to; station++) {
      keep(station, state);
      shearAfter[station] = state.shear;
      state.walk(stations.step(station), load.perIn(station), shearFlexibility);
      shearBefore[station + 1] = state.shear;
      state.shear -= load.pointAt(station + 1);
    }
    keep(to, state);
  }

  private void keep(int station, LineState state) {
    moment[station] = state.moment;
    slope[station] = state.slope;
    deflection[station] = state.deflection;
  }

  /** Adds another curve of the same stations, times a factor. */
  void add(LineCurve other, double factor) {
    add(shearBefore, other.shearBefore, factor);
    add(shearAfter, other.shearAfter, factor);
    add(moment, other.moment, factor);
    add(slope, other.slope, factor);
    add(deflection, other.deflection, factor);
  }

  private static void add(double[] sum, double[] part, double factor) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * part[i];
    }
  }

  /** Forgets what trial walks have left, so that a station without a step on one side reads 0. */
  void clear() {
    Arrays.fill(shearBefore, 0);
    Arrays.fill(shearAfter, 0);
  }

  LineState stateAt(double placeIn) {
    int step = stations.stepWith(placeIn);
    return stateIn(step, placeIn - stations.at(step));
  }

  private LineState stateIn(int step, double beyond) {
    LineState state = new LineState(shearAfter[step], moment[step], slope[step], deflection[step]);
    state.walk(beyond, load(step), shearFlexibility);
    return state;
  }

  private double load(int step) {
    return (shearAfter[step] - shearBefore[step + 1]) / stations.step(step);
  }

  Peak largestShear(int from, int to) {
    Peak peak = new Peak(stations.at(from), shearAfter[from]);
    for (int step = from; step < to; step++) {
      peak = peak.orLarger(stations.at(step), shearAfter[step]);
      peak = peak.orLarger(stations.at(step + 1), shearBefore[step + 1]);
    }
    return peak;
  }

  /** The highest moment above zero; zero at the start if there is none. */
  Peak mostSagging(int from, int to) {
    Peak peak = new Peak(stations.at(from), 0);
    for (int step = from; step <= to; step++) {
      peak = peak.orMore(stations.at(step), moment[step]);
      if (step < to && shearAfter[step] > 0 && shearBefore[step + 1] < 0) {
        double beyond = shearAfter[step] / load(step);
        peak = peak.orMore(stations.at(step) + beyond, stateIn(step, beyond).moment);
      }
    }
    return peak;
  }

  /** The lowest moment below zero; zero at the start if there is none. */
  Peak mostHogging(int from, int to) {
    Peak peak = new Peak(stations.at(from), 0);
    for (int step = from; step <= to; step++) {
      peak = peak.orLess(stations.at(step), moment[step]);
      if (step < to && shearAfter[step] < 0 && shearBefore[step + 1] > 0) {
        double beyond = shearAfter[step] / load(step);
        peak = peak.orLess(stations.at(step) + beyond, stateIn(step, beyond).moment);
      }
    }
    return peak;
  }

  Peak largestDeflection(int from, int to) {
    Peak peak = new Peak(stations.at(from), deflection[from]);
    for (int step = from; step < to; step++) {
      peak = peak.orLarger(stations.at(step + 1), deflection[step + 1]);
      double start = grade(slope[step], shearAfter[step]);
      // Over its last station a beam may be cut, and what is kept there is the slope beyond.
      double turned = step + 1 == to ? stateIn(step, stations.step(step)).slope : slope[step + 1];
      if (start * grade(turned, shearBefore[step + 1]) < 0) {
        double beyond = levelPlace(step, start);
        peak = peak.orLarger(stations.at(step) + beyond, stateIn(step, beyond).deflection);
      }
    }
    return peak;
  }

  private double grade(double turned, double shear) {
    return turned + shearFlexibility * shear;
  }

  private double levelPlace(int step, double startGrade) {
    double low = 0;
    double high = stations.step(step);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      LineState state = stateIn(step, middle);
      if (grade(state.slope, state.shear) * startGrade > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  Stations stations() {
    return stations;
  }

  double[] shearsBefore() {
    return shearBefore.clone();
  }

  double[] shearsAfter() {
    return shearAfter.clone();
  }

  double[] moments() {
    return moment.clone();
  }

  double[] deflections() {
    return deflection.clone();
  }

  double deflection(int station) {
    return deflection[station];
  }

  /** A curve of zeros over the same stations, to add to. */
  LineCurve blank() {
    return new LineCurve(stations, shearFlexibility);
  }
}
