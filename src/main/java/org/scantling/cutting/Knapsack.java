package org.scantling.cutting;

/**
 * The most valuable ways of cutting sticks into several pieces, by dynamic programming over their
 * length: one table serves every length of stick.
 */
final class Knapsack {
  private static final double HAIR = 1e-12;

  private final CuttingProblem problem;
  private final double[] values;
  private final int[] most;
  private final double[][] best;

  /**
   * @param values worth of a piece of each demand, 0 or more
   * @param most pieces of each demand that may be taken
   */
  Knapsack(CuttingProblem problem, double[] values, int[] most) {
    this.problem = problem;
    this.values = values;
    this.most = most;
    int room = 0;
    for (int stick = 0; stick < problem.sticks().size(); stick++) {
      room = Math.max(room, room(stick));
    }
    this.best = new double[values.length + 1][room + 1];
    for (int i = values.length - 1; i >= 0; i--) {
      fill(i, room);
    }
  }

  /** Takes a demand into the table of those after it. */
  private void fill(int demand, int room) {
    int size = size(demand);
    double[] after = best[demand + 1];
    double[] here = best[demand];
    System.arraycopy(after, 0, here, 0, room + 1);
    double worth = 0;
    for (int count = 1; count <= most[demand] && count * size <= room; count++) {
      worth += values[demand];
      for (int left = count * size; left <= room; left++) {
        double one = after[left - count * size] + worth;
        if (one > here[left] + HAIR) {
          here[left] = one;
        }
      }
    }
  }

  /** What a piece takes up: its length and the kerf that goes with it. */
  int size(int demand) {
    return problem.demands().get(demand).lengthTicks() + problem.allowance().kerfTicks();
  }

  /** Room on a stick; one kerf more than it has makes up for the last piece, which needs none. */
  int room(int stick) {
    Allowance allowance = problem.allowance();
    return Math.max(0, allowance.roomTicks(problem.sticks().get(stick)) + allowance.kerfTicks());
  }

  /** The most that demands from this one on can be worth on so much room. */
  double bestFrom(int demand, int left) {
    return best[demand][left];
  }

  double bestWorth(int stick) {
    return best[0][room(stick)];
  }

  /** The pattern that is worth most; of equals the one with the most of the first demands. */
  Pattern bestPattern(int stick) {
    int[] counts = new int[values.length];
    int left = room(stick);
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
}
