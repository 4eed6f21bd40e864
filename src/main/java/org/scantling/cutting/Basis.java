package org.scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * As many columns as there are demands, none made up of others: whole numbers of them make up a
 * heap of pieces in one way or in none.
 */
final class Basis {
  private static final double ZERO = 1e-7;

  private final List<Integer> places;
  private final int[][] columns;
  private final double[][] inverse;

  private Basis(List<Integer> places, int[][] columns, double[][] inverse) {
    this.places = places;
    this.columns = columns;
    this.inverse = inverse;
  }

  /** Out of the given columns, the first ones first. */
  static Optional<Basis> of(List<int[]> all, int size) {
    List<Integer> places = new ArrayList<>();
    List<double[]> reduced = new ArrayList<>();
    for (int place = 0; place < all.size() && places.size() < size; place++) {
      double[] left = Arrays.stream(all.get(place)).asDoubleStream().toArray();
      for (double[] earlier : reduced) {
        int lead = lead(earlier);
        double times = left[lead] / earlier[lead];
        Arrays.setAll(left, i -> i == lead ? 0 : left[i] - times * earlier[i]);
      }
      if (lead(left) >= 0) {
        reduced.add(left);
        places.add(place);
      }
    }
    if (places.size() < size) {
      return Optional.empty();
    }
    int[][] columns = places.stream().map(all::get).toArray(int[][]::new);
    return Optional.of(new Basis(places, columns, inverse(columns)));
  }

  /** The place of the largest number, or -1 where all are nothing. */
  private static int lead(double[] column) {
    int lead = -1;
    double most = ZERO;
    for (int i = 0; i < column.length; i++) {
      if (Math.abs(column[i]) > most) {
        most = Math.abs(column[i]);
        lead = i;
      }
    }
    return lead;
  }

  private static double[][] inverse(int[][] columns) {
    int size = columns.length;
    double[][] both = new double[size][2 * size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        both[i][j] = columns[j][i];
      }
      both[i][size + i] = 1;
    }
    for (int step = 0; step < size; step++) {
      int best = step;
      for (int i = step + 1; i < size; i++) {
        best = Math.abs(both[i][step]) > Math.abs(both[best][step]) ? i : best;
      }
      double[] row = both[best];
      both[best] = both[step];
      both[step] = row;
      double lead = row[step];
      Arrays.setAll(row, j -> row[j] / lead);
      for (int i = 0; i < size; i++) {
        double[] other = both[i];
        double times = other[step];
        if (i != step && times != 0) {
          Arrays.setAll(other, j -> other[j] - times * row[j]);
        }
      }
    }
    return Arrays.stream(both)
        .map(row -> Arrays.copyOfRange(row, size, 2 * size))
        .toArray(double[][]::new);
  }

  /** Places of its columns among those it was chosen from. */
  List<Integer> places() {
    return places;
  }

  int[][] columns() {
    return columns;
  }

  /** How many of each column make up a heap; empty where that is not a whole number, 0 or more. */
  Optional<int[]> madeUp(int[] heap) {
    int size = columns.length;
    int[] times = new int[size];
    for (int j = 0; j < size; j++) {
      double sum = 0;
      for (int i = 0; i < size; i++) {
        sum += inverse[j][i] * heap[i];
      }
      times[j] = (int) Math.round(sum);
      if (times[j] < 0) {
        return Optional.empty();
      }
    }
    for (int i = 0; i < size; i++) {
      int made = 0;
      for (int j = 0; j < size; j++) {
        made += times[j] * columns[j][i];
      }
      if (made != heap[i]) {
        return Optional.empty();
      }
    }
    return Optional.of(times);
  }
}
