package org.scantling.mechanics;

import java.util.Arrays;

/**
 * The places along a straight line at which results are kept: its ends, its supports, every place
 * where a load begins, ends or stands, and even divisions between.
 */
final class Stations {
  private static final int DIVISIONS = 8;
  private static final double MERGE_RATIO = 1e-9;

  private final double[] atIn;

  private Stations(double[] atIn) {
    this.atIn = atIn;
  }

  /**
   * Stations between the first and the last anchor.
   *
   * @param anchorsIn ascending places, at least two; the lengths between are divided evenly
   * @param breaksIn further places, in any order, within the anchors
   */
  static Stations of(double[] anchorsIn, double[] breaksIn) {
    int bays = anchorsIn.length - 1;
    double[] all = Arrays.copyOf(breaksIn, breaksIn.length + bays * DIVISIONS + 1);
    int used = breaksIn.length;
    for (int bay = 0; bay < bays; bay++) {
      double step = (anchorsIn[bay + 1] - anchorsIn[bay]) / DIVISIONS;
      for (int part = 0; part < DIVISIONS; part++) {
        all[used++] = anchorsIn[bay] + part * step;
      }
    }
    all[used] = anchorsIn[bays];
    Arrays.sort(all);
    return new Stations(merged(all));
  }

  private static double[] merged(double[] sorted) {
    double gap = MERGE_RATIO * (sorted[sorted.length - 1] - sorted[0]);
    int kept = 1;
    for (double at : sorted) {
      if (at - sorted[kept - 1] > gap) {
        sorted[kept++] = at;
      }
    }
    return Arrays.copyOf(sorted, kept);
  }

  int count() {
    return atIn.length;
  }

  int last() {
    return atIn.length - 1;
  }

  double at(int station) {
    return atIn[station];
  }

  double lengthIn() {
    return atIn[last()];
  }

  /** Length of the step from a station to the next. */
  double step(int station) {
    return atIn[station + 1] - atIn[station];
  }

  /** The station nearest to a place. */
  int nearest(double placeIn) {
    int below = stepWith(placeIn);
    return placeIn - atIn[below] <= atIn[below + 1] - placeIn ? below : below + 1;
  }

  /** The step in which a place lies: the station at or before it, never the last. */
  int stepWith(double placeIn) {
    int found = Arrays.binarySearch(atIn, placeIn);
    int below = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(below, last() - 1));
  }

  double[] toArray() {
    return atIn.clone();
  }
}
