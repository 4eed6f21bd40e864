package org.scantling.cutting;

import static org.assertj.core.api.Assertions.assertThat;

/** What must hold of every plan. */
final class SoundPlan {
  private SoundPlan() {}

  static CuttingPlan check(CuttingProblem problem, CuttingPlan plan) {
    long cost = 0;
    int[] made = new int[problem.demands().size()];
    for (Cut cut : plan.cuts()) {
      assertThat(cut.times()).isPositive();
      assertThat(cut.pieces()).isPositive();
      assertThat(usedTicks(problem, cut)).isLessThanOrEqualTo(cut.stick().lengthTicks());
      assertThat(problem.sticks()).contains(cut.stick());
      for (int i = 0; i < made.length; i++) {
        made[i] += cut.times() * cut.counts().get(i);
      }
      cost += cut.times() * cut.stick().cost();
    }
    for (int i = 0; i < made.length; i++) {
      assertThat(made[i])
          .as("pieces of %s", problem.demands().get(i))
          .isEqualTo(problem.demands().get(i).count());
    }
    assertThat(plan.cost()).isEqualTo(cost).isGreaterThanOrEqualTo(plan.bound());
    assertThat(plan.bound()).isPositive();
    return plan;
  }

  private static int usedTicks(CuttingProblem problem, Cut cut) {
    int used = 0;
    for (int i = 0; i < cut.counts().size(); i++) {
      used += cut.counts().get(i) * problem.demands().get(i).lengthTicks();
    }
    Allowance lost = problem.allowance();
    int trimmed = 2 * lost.endTrimTicks() + lost.knotsTicks();
    return cut.pieces() == 1 ? used : used + (cut.pieces() - 1) * lost.kerfTicks() + trimmed;
  }
}
