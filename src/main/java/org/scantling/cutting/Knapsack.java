package org.scantling.cutting;

import java.util.Arrays;

/**
 * The most valuable ways of cutting one stick into several pieces, by dynamic programming over its
 * length.
 */
final class Knapsack {
  private static final double HAIR = 1e-12;

  private final CuttingProblem problem;
  private final int stick;
  private final int room;
  private final double[] values;
  private final int[] most;
  private final double[][] best;

  /**
   * @param stick place of the stick in the problem
   * @param values worth of a piece of each demand, 0 or more
   * @param most pieces of each demand that may be taken
   */
  Knapsack(CuttingProblem problem, int stick, double[] values, int[] most) {
    this.problem = problem;
    this.stick = stick;
    this.values = values;
    this.most = most;
    // A kerf goes with every piece, and one more kerf of room makes up for the last.
    this.room =
        Math.max(
            0,
            problem.allowance().roomTicks(problem.sticks().get(stick))
                + problem.allowance().kerfTicks());
    this.best = new double[values.length + 1][room + 1];
    for (int i = values.length - 1; i >= 0; i--) {
      fill(i);
    }
  }

  /** Takes a demand into the table of those after it. */
  private void fill(int demand) {
    int size = size(demand);
    double[] after = best[demand + 1];
    double[] here = best[demand];
    System.arraycopy(after, 0, here, 0, room + 1);
    for (int left = size; left <= room; left++) {
      for (int count = 1; count <= most[demand] && count * size <= left; count++) {
        double worth = after[left - count * size] + count * values[demand];
        if (worth > here[left] + HAIR) {
          here[left] = worth;
        }
      }
    }
  }

  int size(int demand) {
    return problem.demands().get(demand).lengthTicks() + problem.allowance().kerfTicks();
  }

  int room() {
    return room;
  }

  /** The most that demands from this one on can be worth on so much room. */
  double bestFrom(int demand, int left) {
    return best[demand][left];
  }

  double bestWorth() {
    return best[0][room];
  }

  /** The pattern that is worth most; of equals the one with the most of the first demands. */
  Pattern bestPattern() {
    int[] counts = new int[values.length];
    int left = room;
    for (int i = 0; i < counts.length; i++) {
      int count = Math.min(most[i], left / size(i));
      while (count > 0
          && best[i + 1][left - count * size(i)] + count * values[i] < best[i][left] - HAIR * 10) {
        count--;
      }
      counts[i] = count;
      left -= count * size(i);
    }
    return new Pattern(stick, counts);
  }

  @Override
  public String toString() {
    return "stick " + stick + ", values " + Arrays.toString(values);
  }
}
