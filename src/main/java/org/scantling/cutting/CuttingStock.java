package org.scantling.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the plan that costs least.
 *
 * <p>Column generation gives prices, a lower bound and good patterns; an integer program over those
 * patterns gives a plan; where that plan does not meet the bound, a second integer program over
 * every pattern that a cheaper plan could hold either finds it or proves that there is none. Before
 * that, plans are looked through by what they lose at those prices ({@link LossSearch}).
 *
 * <p>Source: P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock
 * problem, Operations Research 9, 1961, for the prices and the bound (from memory).
 */
public final class CuttingStock {
  private static final int GREEDY_PLANS = 24;
  private static final int MOST_BY_LOSS = 6_000;
  private static final int MOST_IN_A_PROGRAM = 1_500;
  private static final double HAIR = 1e-6;
  private static final double LAST_BITS = 1e-4;

  private final CuttingProblem problem;
  private final long unit;
  private final Prices prices;
  private List<Pattern> sticks = List.of();
  private long bound;

  private CuttingStock(CuttingProblem problem) {
    this.problem = problem;
    this.unit = problem.sticks().stream().mapToLong(Stick::cost).reduce(0, CuttingStock::common);
    this.prices =
        new Prices(problem, problem.demands().stream().mapToInt(PieceDemand::count).toArray());
  }

  /**
   * The cheapest plan with its bound. Where the proof would take too long, the plan is the best
   * found and the bound says how far off it can be.
   */
  public static CuttingPlan solve(CuttingProblem problem) {
    CuttingStock stock = new CuttingStock(problem);
    stock.search();
    return new PlanWriter(problem, stock.sticks).plan(Math.min(stock.bound, stock.cost()));
  }

  private void search() {
    List<Pattern> patterns = singles();
    prices.settle(patterns);
    bound = roundedUp(prices.bound());
    Greedy greedy = new Greedy(problem, prices.values());
    Set<Pattern> pool = new LinkedHashSet<>(patterns);
    sticks = greedy.sticks();
    for (int plan = 1; plan < GREEDY_PLANS && cost() > bound; plan++) {
      List<Pattern> next = greedy.sticks();
      if (cost(next) <= cost()) {
        pool.addAll(next);
      }
      take(next);
    }
    long atPrices = bound;
    byLoss();
    long before = cost();
    if (cost() > bound) {
      new StickProgram(problem, new ArrayList<>(pool), unit)
          .solve(atPrices, cost() - unit)
          .sticks()
          .ifPresent(this::take);
    }
    if (cost() < before) {
      byLoss();
    }
    boolean open = true;
    while (open && cost() > bound) {
      open = improve();
    }
  }

  /** Looks through the plans that lose less than the best one yet, as far as that goes. */
  private void byLoss() {
    double loss = cost() - unit - prices.bound();
    Optional<List<Pattern>> cheap =
        cost() > bound
            ? CheapPatterns.of(problem, prices.values(), loss, MOST_BY_LOSS)
            : Optional.empty();
    if (cheap.isPresent()) {
      LossSearch.Found found =
          new LossSearch(problem, cheap.get(), prices.values(), loss, unit).found();
      found.sticks().ifPresent(this::take);
      long least = roundedUp(prices.bound() + found.leastLoss() - LAST_BITS);
      bound = found.searched() ? cost() : Math.max(bound, Math.min(cost(), least));
    }
  }

  /** Looks for a cheaper plan among all that could be one; false when the search is over. */
  private boolean improve() {
    double loss = cost() - unit - prices.bound();
    Optional<List<Pattern>> cheap =
        CheapPatterns.of(problem, prices.values(), loss, MOST_IN_A_PROGRAM);
    if (cheap.isEmpty()) {
      return false;
    }
    StickProgram.Found found =
        new StickProgram(problem, cheap.get(), unit).solve(bound, cost() - unit);
    found.sticks().ifPresent(this::take);
    if (found.none()) {
      bound = cost();
    }
    return found.sticks().isPresent();
  }

  /** Keeps a plan if it is one, and cheaper than what there was. */
  private void take(List<Pattern> found) {
    if (covers(found) && cost(found) < cost()) {
      sticks = found;
    }
  }

  private boolean covers(List<Pattern> found) {
    for (int i = 0; i < problem.demands().size(); i++) {
      int demand = i;
      int made = found.stream().mapToInt(pattern -> pattern.count(demand)).sum();
      if (made < problem.demands().get(i).count()) {
        return false;
      }
    }
    return found.stream().allMatch(problem::fits);
  }

  private long cost() {
    return cost(sticks);
  }

  private long cost(List<Pattern> found) {
    return found.stream().mapToLong(each -> problem.sticks().get(each.stick()).cost()).sum();
  }

  /** Each piece on its own, from the cheapest stick that holds it. */
  private List<Pattern> singles() {
    List<Pattern> singles = new ArrayList<>();
    for (int i = 0; i < problem.demands().size(); i++) {
      int cheapest = -1;
      for (int stick = 0; stick < problem.sticks().size(); stick++) {
        Stick one = problem.sticks().get(stick);
        boolean holds = problem.demands().get(i).lengthTicks() <= one.lengthTicks();
        if (holds && (cheapest < 0 || one.cost() < problem.sticks().get(cheapest).cost())) {
          cheapest = stick;
        }
      }
      singles.add(Pattern.single(cheapest, i, problem.demands().size()));
    }
    return singles;
  }

  private long roundedUp(double cost) {
    return (long) Math.ceil(cost / unit - HAIR) * unit;
  }

  private static long common(long one, long other) {
    return other == 0 ? one : common(other, one % other);
  }
}
