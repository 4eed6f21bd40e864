package org.scantling.judge;

import java.util.ArrayList;
import java.util.List;

/** Places along a timber: those that matter, and enough between them. */
final class Grid {
  private final List<Double> placesIn = new ArrayList<>();
  private final List<Boolean> cuts = new ArrayList<>();

  /** Adds a place; the piece that ends here is cut if so said, and the next starts here. */
  static Grid of(List<Double> mattersIn, List<Double> cutsIn, double closestIn) {
    Grid grid = new Grid();
    double last = Double.NEGATIVE_INFINITY;
    for (double place : mattersIn.stream().sorted().toList()) {
      if (place - last < 1e-6) {
        continue;
      }
      int parts = Double.isInfinite(last) ? 1 : (int) Math.ceil((place - last) / closestIn);
      for (int i = 1; i < parts; i++) {
        grid.add(last + (place - last) * i / parts, false);
      }
      grid.add(place, cutsIn.stream().anyMatch(cut -> Math.abs(cut - place) < 1e-6));
      last = place;
    }
    return grid;
  }

  private void add(double placeIn, boolean cut) {
    placesIn.add(placeIn);
    cuts.add(cut);
    if (cut) {
      placesIn.add(placeIn);
      cuts.add(false);
    }
  }

  int size() {
    return placesIn.size();
  }

  double[] placesIn() {
    return placesIn.stream().mapToDouble(Double::doubleValue).toArray();
  }

  boolean[] cuts() {
    boolean[] result = new boolean[size()];
    for (int i = 0; i < size(); i++) {
      result[i] = cuts.get(i);
    }
    return result;
  }

  boolean[] near(List<Double> wantedIn) {
    boolean[] result = new boolean[size()];
    for (int i = 0; i < size(); i++) {
      double place = placesIn.get(i);
      result[i] = wantedIn.stream().anyMatch(each -> Math.abs(each - place) < 1e-6);
    }
    return result;
  }

  /** Length of timber on each node; at a cut each side has its own. */
  double[] shareIn() {
    double[] share = new double[size()];
    for (int i = 0; i + 1 < size(); i++) {
      double half = (placesIn.get(i + 1) - placesIn.get(i)) / 2;
      share[i] += half;
      share[i + 1] += half;
    }
    return share;
  }
}
