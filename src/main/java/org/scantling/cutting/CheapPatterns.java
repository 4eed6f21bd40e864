package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every pattern that a plan below a given cost can hold. At the prices behind the bound a pattern
 * brings in less than its stick costs by some loss, and the losses of a plan add up to what it
 * costs more than the bound: a pattern that loses more than that on its own is in no such plan.
 *
 * <p>Patterns to which another piece could be added are left out: the fuller ones do as well.
 */
final class CheapPatterns {
  private static final double HAIR = 1e-6;

  private final CuttingProblem problem;
  private final double[] values;
  private final double loss;
  private final int most;
  private final List<Pattern> found = new ArrayList<>();

  private CheapPatterns(CuttingProblem problem, double[] values, double loss, int most) {
    this.problem = problem;
    this.values = values;
    this.loss = loss;
    this.most = most;
  }

  /**
   * @param loss the most that a pattern may lose
   * @param most the most patterns that are of use
   * @return the patterns, or nothing when they are too many to be of use
   */
  static Optional<List<Pattern>> of(
      CuttingProblem problem, double[] values, double loss, int most) {
    CheapPatterns cheap = new CheapPatterns(problem, values, loss, most);
    for (int stick = 0; stick < problem.sticks().size() && !cheap.full(); stick++) {
      cheap.singles(stick);
      cheap.several(stick);
    }
    return cheap.full() ? Optional.empty() : Optional.of(cheap.found);
  }

  private boolean full() {
    return found.size() > most;
  }

  private void singles(int stick) {
    for (int i = 0; i < values.length; i++) {
      Pattern single = Pattern.single(stick, i, values.length);
      if (problem.fits(single) && values[i] >= least(stick)) {
        found.add(single);
      }
    }
  }

  private double least(int stick) {
    long cost = problem.sticks().get(stick).cost();
    return cost - loss - HAIR * cost;
  }

  private void several(int stick) {
    int[] most = problem.demands().stream().mapToInt(PieceDemand::count).toArray();
    Knapsack knapsack = new Knapsack(problem, values, most);
    new Search(stick, knapsack, most).from(0, knapsack.room(stick), 0);
  }

  /** Walks through the patterns of one stick, leaving branches that cannot bring in enough. */
  private final class Search {
    private final int stick;
    private final Knapsack knapsack;
    private final int[] most;
    private final int[] counts;

    Search(int stick, Knapsack knapsack, int[] most) {
      this.stick = stick;
      this.knapsack = knapsack;
      this.most = most;
      this.counts = new int[most.length];
    }

    void from(int demand, int left, double worth) {
      if (full() || worth + knapsack.bestFrom(demand, left) < least(stick)) {
        return;
      }
      if (demand == counts.length) {
        if (!roomForMore(left)) {
          found.add(new Pattern(stick, counts));
        }
        return;
      }
      int size = knapsack.size(demand);
      for (int count = Math.min(most[demand], left / size); count >= 0; count--) {
        counts[demand] = count;
        from(demand + 1, left - count * size, worth + count * values[demand]);
      }
      counts[demand] = 0;
    }

    private boolean roomForMore(int left) {
      for (int i = 0; i < counts.length; i++) {
        if (counts[i] < most[i] && knapsack.size(i) <= left) {
          return true;
        }
      }
      return false;
    }
  }
}
