package org.scantling.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What whole sticks cannot make up is known, and so how near to the best a plan is. */
class LossSearchTest {
  private static final int NEARLY_ALL = 9;

  /** Before plans were looked through by what they lose, five of these ten were proven. */
  @Test
  void nearly_all_jobs_of_two_hundred_pieces_at_uneven_prices_are_proven() {
    long proven =
        IntStream.range(0, 10)
            .mapToObj(seed -> UnevenPrices.job(new Random(seed)))
            .map(job -> SoundPlan.check(job, CuttingStock.solve(job)))
            .filter(CuttingPlan::proven)
            .count();
    assertThat(proven).isGreaterThanOrEqualTo(NEARLY_ALL);
  }

  /** Against every way of cutting, counted out one by one. */
  @Test
  void the_bound_is_never_above_the_best_of_all_ways() {
    Random random = new Random(1969);
    for (int job = 0; job < 150; job++) {
      CuttingProblem problem = small(random);
      CuttingPlan plan = SoundPlan.check(problem, CuttingStock.solve(problem));
      long best = BruteForce.leastCost(problem);
      assertThat(plan.bound()).as(problem.toString()).isLessThanOrEqualTo(best);
      assertThat(plan.cost()).as(problem.toString()).isGreaterThanOrEqualTo(best);
      Prices prices =
          new Prices(problem, problem.demands().stream().mapToInt(PieceDemand::count).toArray());
      List<Pattern> patterns = singles(problem);
      prices.settle(patterns);
      double loss = plan.cost() - prices.bound() + 40;
      LossSearch.Found found =
          CheapPatterns.of(problem, prices.values(), loss, 6_000)
              .map(cheap -> new LossSearch(problem, cheap, prices.values(), loss, 1).found())
              .orElseThrow();
      assertThat(prices.bound() + found.leastLoss())
          .as(problem.toString())
          .isLessThanOrEqualTo(best + 1e-4);
      if (found.searched()) {
        assertThat(cost(problem, found.sticks().orElseThrow())).isEqualTo(best);
      }
    }
  }

  private static long cost(CuttingProblem problem, List<Pattern> sticks) {
    return sticks.stream().mapToLong(each -> problem.sticks().get(each.stick()).cost()).sum();
  }

  /** Each piece on its own, from the cheapest stick that holds it. */
  private static List<Pattern> singles(CuttingProblem problem) {
    List<Pattern> singles = new ArrayList<>();
    int size = problem.demands().size();
    for (int i = 0; i < size; i++) {
      int demand = i;
      int cheapest =
          IntStream.range(0, problem.sticks().size())
              .boxed()
              .filter(stick -> problem.fits(Pattern.single(stick, demand, size)))
              .min(Comparator.comparingLong(stick -> problem.sticks().get(stick).cost()))
              .orElseThrow();
      singles.add(Pattern.single(cheapest, i, size));
    }
    return singles;
  }

  private static CuttingProblem small(Random random) {
    TreeMap<Integer, Integer> counts = new TreeMap<>();
    for (int piece = 0; piece < 8; piece++) {
      counts.merge(5 + random.nextInt(12) * 5, 1, Integer::sum);
    }
    List<PieceDemand> demands =
        counts.entrySet().stream()
            .map(each -> new PieceDemand(each.getKey(), each.getValue()))
            .toList();
    List<Stick> sticks =
        List.of(
            new Stick(60 + random.nextInt(10), 70 + random.nextInt(40)),
            new Stick(80 + random.nextInt(10), 90 + random.nextInt(50)),
            new Stick(100, 110 + random.nextInt(60)));
    return new CuttingProblem(demands, sticks, new Allowance(random.nextInt(3), 1, 0));
  }

  /** By hand: sticks of 2 A and of 3 B make up all but the kind of the rest: 2 x 3 kinds. */
  @Test
  void heaps_are_alike_where_whole_sticks_tell_them_apart() {
    Lattice lattice = new Lattice(new int[][] {{2, 0}, {0, 3}});
    assertThat(lattice.kinds(6)).hasValue(6);
    assertThat(lattice.kinds(5)).isEmpty();
    assertThat(lattice.digits(new int[] {4, 6})).containsOnly(0);
    assertThat(lattice.digits(new int[] {5, 6})).isEqualTo(lattice.digits(new int[] {1, 0}));
    assertThat(lattice.digits(new int[] {5, 6})).isNotEqualTo(lattice.digits(new int[] {4, 7}));
  }
}
