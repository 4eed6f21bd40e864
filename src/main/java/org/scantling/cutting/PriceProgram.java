package org.scantling.cutting;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The linear program for the prices: as dear as can be, while every known pattern brings in no more
 * than its stick costs.
 */
final class PriceProgram {
  private final CuttingProblem problem;
  private final ExpressionsBasedModel model = new ExpressionsBasedModel();
  private final Variable[] prices;
  private int patterns;

  PriceProgram(CuttingProblem problem, int[] wanted) {
    this.problem = problem;
    this.prices = new Variable[problem.demands().size()];
    double dearest = problem.sticks().stream().mapToLong(Stick::cost).max().orElseThrow();
    for (int i = 0; i < prices.length; i++) {
      prices[i] = model.addVariable("price " + i).lower(0).upper(dearest).weight(wanted[i]);
    }
  }

  /** Adds a pattern that may bring in no more than its stick costs. */
  void holdDown(Pattern pattern) {
    long cost = problem.sticks().get(pattern.stick()).cost();
    Expression row = model.addExpression("pattern " + patterns++).upper(cost);
    for (int i = 0; i < prices.length; i++) {
      if (pattern.count(i) > 0) {
        row.set(prices[i], pattern.count(i));
      }
    }
  }

  /**
   * @throws IllegalStateException when the solver finds no prices, which always exist
   */
  double[] solve() {
    Optimisation.Result result = model.maximise();
    if (!result.getState().isFeasible()) {
      throw new IllegalStateException("no prices were found: " + result.getState());
    }
    double[] values = new double[prices.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = Math.max(0, result.doubleValue(i));
    }
    return values;
  }
}
