package org.scantling.cutting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * What a piece of each demand is worth: prices under which no way of cutting a stick brings in more
 * than the stick costs. The demands at such prices are a lower bound of the cost.
 */
final class Prices {
  private static final double HAIR = 1e-7;

  private final CuttingProblem problem;
  private final int[] most;
  private double[] values = {};
  private double bound;

  /**
   * @param wanted pieces of each demand, which may be fewer than the problem's
   */
  Prices(CuttingProblem problem, int[] wanted) {
    this.problem = problem;
    this.most = wanted.clone();
  }

  /**
   * Finds prices and the patterns that hold them down, starting from the given patterns, to which
   * the found ones are added.
   */
  void settle(Collection<Pattern> patterns) {
    PriceProgram program = new PriceProgram(problem, most);
    List<Pattern> fresh = new ArrayList<>(patterns);
    while (!fresh.isEmpty()) {
      fresh.forEach(program::holdDown);
      values = program.solve();
      fresh = tooDear();
      patterns.addAll(fresh);
    }
  }

  double[] values() {
    return values;
  }

  /** No plan costs less, up to the last bits. */
  double bound() {
    return bound;
  }

  /**
   * The patterns that bring in most on each stick, where that is more than it costs. The bound
   * allows for what is still too dear, so that it holds at any prices.
   */
  private List<Pattern> tooDear() {
    List<Pattern> dear = new ArrayList<>();
    double excess = dearestSingle();
    Knapsack knapsack = new Knapsack(problem, values, most);
    for (int stick = 0; stick < problem.sticks().size(); stick++) {
      double cost = problem.sticks().get(stick).cost();
      excess = Math.max(excess, knapsack.bestWorth(stick) / cost);
      if (knapsack.bestWorth(stick) > cost * (1 + HAIR)) {
        dear.add(knapsack.bestPattern(stick));
      }
    }
    double all = 0;
    for (int i = 0; i < most.length; i++) {
      all += most[i] * values[i];
    }
    bound = all / Math.max(1, excess);
    return dear;
  }

  private double dearestSingle() {
    double excess = 0;
    for (int i = 0; i < most.length; i++) {
      for (Stick stick : problem.sticks()) {
        if (problem.demands().get(i).lengthTicks() <= stick.lengthTicks()) {
          excess = Math.max(excess, values[i] / stick.cost());
        }
      }
    }
    return excess;
  }
}
