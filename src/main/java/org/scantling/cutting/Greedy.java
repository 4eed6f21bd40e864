package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A plan at once: over and over the pattern whose pieces are worth most for what its stick costs.
 * What is left for the last sticks fits badly, so the worth of a piece is learned: after each plan
 * a piece is worth what its share of its sticks came to, waste counted in, and pieces that ended up
 * among much waste are taken earlier in the next.
 *
 * <p>Source: sequential value correction, after E. Mukhacheva and others (from memory).
 */
final class Greedy {
  private static final double HAIR = 1e-9;
  private static final double LEARNT = 0.5;
  private static final double LONG_FIRST = 1.02;

  private final CuttingProblem problem;
  private final double[] values;

  /**
   * @param values worth of a piece of each demand to begin with
   */
  Greedy(CuttingProblem problem, double[] values) {
    this.problem = problem;
    this.values = values.clone();
  }

  /** The next plan, one pattern a stick. */
  List<Pattern> sticks() {
    int[] left = problem.demands().stream().mapToInt(PieceDemand::count).toArray();
    List<Pattern> taken = new ArrayList<>();
    while (anyLeft(left)) {
      Pattern pattern = next(left);
      for (int i = 0; i < left.length; i++) {
        left[i] -= pattern.count(i);
      }
      taken.add(pattern);
    }
    learn(taken);
    return taken;
  }

  private static boolean anyLeft(int[] left) {
    for (int count : left) {
      if (count > 0) {
        return true;
      }
    }
    return false;
  }

  private Pattern next(int[] left) {
    Pattern best = null;
    double bestShare = 0;
    Knapsack knapsack = new Knapsack(problem, values, left);
    for (int stick = 0; stick < problem.sticks().size(); stick++) {
      Pattern pattern = best(knapsack.bestPattern(stick), left);
      double share = pattern.worth(values) / problem.sticks().get(stick).cost();
      if (pattern.pieces() > 0 && (best == null || share > bestShare * (1 + HAIR))) {
        best = pattern;
        bestShare = share;
      }
    }
    return Objects.requireNonNull(best, "no stick takes a piece that is left");
  }

  /** That pattern, or a single piece that is worth more, for it may take the whole stick. */
  private Pattern best(Pattern several, int[] left) {
    Pattern best = several;
    for (int i = 0; i < left.length; i++) {
      Pattern single = Pattern.single(several.stick(), i, left.length);
      boolean better = best.pieces() == 0 || values[i] > best.worth(values) * (1 + HAIR);
      if (left[i] > 0 && better && problem.fits(single)) {
        best = single;
      }
    }
    return best;
  }

  private void learn(List<Pattern> plan) {
    double[] came = new double[values.length];
    for (Pattern pattern : plan) {
      double usedTicks = 0;
      for (int i = 0; i < came.length; i++) {
        usedTicks += (double) pattern.count(i) * problem.demands().get(i).lengthTicks();
      }
      double perTick = problem.sticks().get(pattern.stick()).cost() / usedTicks;
      for (int i = 0; i < came.length; i++) {
        PieceDemand demand = problem.demands().get(i);
        double each = perTick * Math.pow(demand.lengthTicks(), LONG_FIRST);
        came[i] += pattern.count(i) * each / demand.count();
      }
    }
    for (int i = 0; i < values.length; i++) {
      values[i] = (1 - LEARNT) * values[i] + LEARNT * came[i];
    }
  }
}
