package org.scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns sticks into a plan: no piece too many, equal sticks together, long ones first. */
final class PlanWriter {
  private final CuttingProblem problem;
  private final List<Pattern> sticks;
  private final int[] left;

  PlanWriter(CuttingProblem problem, List<Pattern> sticks) {
    this.problem = problem;
    this.left = problem.demands().stream().mapToInt(PieceDemand::count).toArray();
    this.sticks = new ArrayList<>(sticks);
    this.sticks.sort(
        Comparator.comparingInt(this::lengthTicks)
            .reversed()
            .thenComparing(Pattern::toString, Comparator.reverseOrder()));
  }

  CuttingPlan plan(long bound) {
    Map<Pattern, Integer> times = new LinkedHashMap<>();
    for (Pattern stick : sticks) {
      Pattern needed = needed(stick);
      if (needed.pieces() > 0) {
        times.merge(needed, 1, Integer::sum);
      }
    }
    List<Cut> cuts = new ArrayList<>();
    times.forEach((pattern, count) -> cuts.add(cut(pattern, count)));
    long cost = cuts.stream().mapToLong(cut -> cut.times() * cut.stick().cost()).sum();
    return new CuttingPlan(cuts, cost, Math.min(bound, cost));
  }

  /** The pattern without what earlier sticks have made already. */
  private Pattern needed(Pattern stick) {
    int[] counts = new int[left.length];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = Math.min(stick.count(i), left[i]);
      left[i] -= counts[i];
    }
    return new Pattern(stick.stick(), counts);
  }

  private Cut cut(Pattern pattern, int times) {
    int[] counts = new int[left.length];
    Arrays.setAll(counts, pattern::count);
    List<Integer> listed = Arrays.stream(counts).boxed().toList();
    return new Cut(problem.sticks().get(pattern.stick()), listed, times);
  }

  private int lengthTicks(Pattern pattern) {
    return problem.sticks().get(pattern.stick()).lengthTicks();
  }
}
