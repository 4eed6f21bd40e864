package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.type.context.NumberContext;

/**
 * The integer program over a set of patterns: how many sticks to cut by each, at the least cost
 * between two limits.
 *
 * <p>One worker and a limit on steps, not on time, so that the same problem always has the same
 * answer; a step takes longer the more patterns there are, so there are fewer then.
 */
final class StickProgram {
  private static final int MOST_WORK = 600_000;
  private static final int MOST_STEPS = 5_000;
  private static final double WHOLE = 1e-6;
  private static final NumberContext GAP = NumberContext.of(12, 9);

  private final CuttingProblem problem;
  private final List<Pattern> patterns;
  private final long unit;

  /** What came of it: sticks where a plan was found; otherwise whether there is surely none. */
  record Found(Optional<List<Pattern>> sticks, boolean none) {}

  /**
   * @param unit every cost is a multiple of it
   */
  StickProgram(CuttingProblem problem, List<Pattern> patterns, long unit) {
    this.problem = problem;
    this.patterns = patterns;
    this.unit = unit;
  }

  /**
   * @param least no plan costs less
   * @param most no plan that costs more is of use
   */
  Found solve(long least, long most) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    model.options.integer(
        IntegerStrategy.newConfigurable().withParallelism(() -> 1).withGapTolerance(GAP));
    int steps = Math.min(MOST_STEPS, 1 + MOST_WORK / Math.max(1, patterns.size()));
    model.options.iterations_abort = steps;
    model.options.iterations_suffice = steps;
    Variable[] times = times(model, most);
    cover(model, times);
    Expression cost = model.addExpression("cost").lower(least / unit).upper(most / unit);
    for (int p = 0; p < times.length; p++) {
      cost.set(times[p], costUnits(p));
    }
    return read(model.minimise());
  }

  private Variable[] times(ExpressionsBasedModel model, long most) {
    Variable[] times = new Variable[patterns.size()];
    for (int p = 0; p < times.length; p++) {
      times[p] =
          model
              .addVariable("pattern " + p)
              .integer(true)
              .lower(0)
              .upper(most / unit / costUnits(p))
              .weight(costUnits(p));
    }
    return times;
  }

  private void cover(ExpressionsBasedModel model, Variable[] times) {
    for (int i = 0; i < problem.demands().size(); i++) {
      Expression row = model.addExpression("demand " + i).lower(problem.demands().get(i).count());
      for (int p = 0; p < times.length; p++) {
        if (patterns.get(p).count(i) > 0) {
          row.set(times[p], patterns.get(p).count(i));
        }
      }
    }
  }

  private long costUnits(int pattern) {
    return problem.sticks().get(patterns.get(pattern).stick()).cost() / unit;
  }

  private Found read(Optimisation.Result result) {
    if (!result.getState().isFeasible()) {
      return new Found(Optional.empty(), result.getState() == Optimisation.State.INFEASIBLE);
    }
    List<Pattern> sticks = new ArrayList<>();
    for (int p = 0; p < patterns.size(); p++) {
      long count = Math.round(result.doubleValue(p));
      if (Math.abs(count - result.doubleValue(p)) > WHOLE) {
        return new Found(Optional.empty(), false);
      }
      for (int i = 0; i < count; i++) {
        sticks.add(patterns.get(p));
      }
    }
    return new Found(Optional.of(sticks), false);
  }
}
