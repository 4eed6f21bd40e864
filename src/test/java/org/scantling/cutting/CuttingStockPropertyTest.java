package org.scantling.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Random jobs: equal to the best of all ways while these can be counted, and sound beyond. */
class CuttingStockPropertyTest {
  @Provide
  Arbitrary<CuttingProblem> small() {
    return Combinators.combine(
            Arbitraries.integers().between(5, 60).list().ofMinSize(1).ofMaxSize(10),
            Arbitraries.integers().between(60, 100).set().ofMinSize(1).ofMaxSize(4),
            Arbitraries.integers().between(1, 90),
            Arbitraries.integers().between(0, 3),
            Arbitraries.integers().between(0, 4))
        .as(
            (pieces, lengths, price, kerf, trim) ->
                new CuttingProblem(
                    demands(pieces),
                    lengths.stream()
                        .sorted()
                        .map(each -> new Stick(each, 20 + each * price % 97))
                        .toList(),
                    new Allowance(kerf, trim, trim / 2)));
  }

  private static List<PieceDemand> demands(List<Integer> pieces) {
    TreeMap<Integer, Integer> counts = new TreeMap<>();
    pieces.forEach(each -> counts.merge(each, 1, Integer::sum));
    List<PieceDemand> demands = new ArrayList<>();
    counts.descendingMap().forEach((length, count) -> demands.add(new PieceDemand(length, count)));
    return demands;
  }

  @Property(tries = 400, seed = "19610601", edgeCases = EdgeCasesMode.NONE)
  void up_to_ten_pieces_cost_what_the_best_of_all_ways_costs(
      @ForAll("small") CuttingProblem problem) {
    CuttingPlan plan = SoundPlan.check(problem, CuttingStock.solve(problem));
    assertThat(plan.cost()).isEqualTo(BruteForce.leastCost(problem));
    assertThat(plan.proven()).isTrue();
  }

  @Property(tries = 40, seed = "7", edgeCases = EdgeCasesMode.NONE)
  void the_same_job_twice_gives_the_same_plan(@ForAll("small") CuttingProblem problem) {
    assertThat(CuttingStock.solve(problem)).isEqualTo(CuttingStock.solve(problem));
  }

  @Property(tries = 60, seed = "11", edgeCases = EdgeCasesMode.NONE)
  void one_more_length_on_offer_never_costs_more(@ForAll("small") CuttingProblem problem) {
    List<Stick> more = new ArrayList<>(problem.sticks());
    more.add(new Stick(130, 101));
    CuttingProblem richer = new CuttingProblem(problem.demands(), more, problem.allowance());
    assertThat(CuttingStock.solve(richer).cost())
        .isLessThanOrEqualTo(CuttingStock.solve(problem).cost());
  }

  @Property(tries = 60, seed = "13", edgeCases = EdgeCasesMode.NONE)
  void one_more_piece_never_costs_less(@ForAll("small") CuttingProblem problem) {
    List<PieceDemand> more = new ArrayList<>(problem.demands());
    PieceDemand first = more.remove(0);
    more.add(0, new PieceDemand(first.lengthTicks(), first.count() + 1));
    CuttingProblem longer = new CuttingProblem(more, problem.sticks(), problem.allowance());
    assertThat(CuttingStock.solve(longer).cost())
        .isGreaterThanOrEqualTo(CuttingStock.solve(problem).cost());
  }

  @Provide
  Arbitrary<CuttingProblem> yards() {
    return Arbitraries.integers()
        .between(0, 1_000_000)
        .map(seed -> CuttingStockBenchmark.job(new Random(seed)));
  }

  @Property(tries = 25, seed = "20120517", edgeCases = EdgeCasesMode.NONE)
  void two_hundred_pieces_are_planned_to_half_a_percent(@ForAll("yards") CuttingProblem problem) {
    assertThat(problem.demands().stream().mapToInt(PieceDemand::count).sum()).isEqualTo(200);
    CuttingPlan plan = SoundPlan.check(problem, CuttingStock.solve(problem));
    assertThat(plan.gapRatio()).isLessThan(0.005);
  }
}
