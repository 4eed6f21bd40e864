package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;

/** A good plan at once: over and over the pattern that brings in most for what its stick costs. */
final class Greedy {
  private static final double HAIR = 1e-9;

  private final CuttingProblem problem;
  private final double[] values;
  private final int[] left;

  Greedy(CuttingProblem problem, double[] values) {
    this.problem = problem;
    this.values = values.clone();
    this.left = problem.demands().stream().mapToInt(Demand::count).toArray();
    // A piece that the prices make worthless must be cut all the same.
    for (int i = 0; i < this.values.length; i++) {
      this.values[i] = Math.max(this.values[i], HAIR * problem.demands().get(i).lengthTicks());
    }
  }

  /** Patterns, one a stick. */
  List<Pattern> sticks() {
    List<Pattern> taken = new ArrayList<>();
    while (anyLeft()) {
      Pattern pattern = next();
      for (int i = 0; i < left.length; i++) {
        left[i] -= pattern.count(i);
      }
      taken.add(pattern);
    }
    return taken;
  }

  private boolean anyLeft() {
    for (int count : left) {
      if (count > 0) {
        return true;
      }
    }
    return false;
  }

  private Pattern next() {
    Pattern best = null;
    double bestShare = -1;
    for (int stick = 0; stick < problem.sticks().size(); stick++) {
      for (Pattern pattern : candidates(stick)) {
        double share = pattern.worth(values) / problem.sticks().get(stick).cost();
        if (share > bestShare + HAIR) {
          best = pattern;
          bestShare = share;
        }
      }
    }
    return best;
  }

  private List<Pattern> candidates(int stick) {
    List<Pattern> candidates = new ArrayList<>();
    Pattern several = new Knapsack(problem, stick, values, left).bestPattern();
    if (several.pieces() > 0) {
      candidates.add(several);
    }
    for (int i = 0; i < left.length; i++) {
      int length = problem.demands().get(i).lengthTicks();
      if (left[i] > 0 && length <= problem.sticks().get(stick).lengthTicks()) {
        candidates.add(Pattern.single(stick, i, left.length));
      }
    }
    return candidates;
  }
}
