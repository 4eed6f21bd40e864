package org.scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Looks through all plans by what they lose at the prices behind the bound. Patterns that lose
 * nothing make up most of a plan; whichever pieces they cannot make up in whole sticks must come
 * out of patterns that lose something, and the least that this takes is known for every kind of
 * rest. So a plan is looked for among the few that lose less than the best one yet.
 *
 * <p>Source: R. E. Gomory, Some polyhedra related to combinatorial problems, Linear Algebra and its
 * Applications 2, 1969 (from memory).
 */
final class LossSearch {
  private static final int MOST_KINDS = 1_000_000;
  private static final long MOST_FILLED = 50_000_000;
  private static final int MOST_WORK = 4_000_000;
  private static final int MOST_TAKEN = 100;
  private static final int ROUNDS = 20;
  private static final double HAIR = 1e-6;

  private static final Found NOTHING = new Found(Optional.empty(), false, 0);

  private final CuttingProblem problem;
  private final List<Pattern> patterns;
  private final List<int[]> columns = new ArrayList<>();
  private final List<Double> losses = new ArrayList<>();
  private final double unit;
  private double most;
  // Laid out by found() before anything looks at them.
  private int[] order = {};
  private int[][] kinds = {};

  @SuppressWarnings("NullAway.Init")
  private Basis basis;

  @SuppressWarnings("NullAway.Init")
  private LeastLoss least;

  private int work;
  private final List<Integer> taken = new ArrayList<>();
  private Optional<List<Pattern>> best = Optional.empty();

  /**
   * What came of it.
   *
   * @param sticks a plan that loses less than was allowed, the best there is where all was searched
   * @param searched true where every plan was looked at
   * @param leastLoss no plan loses less
   */
  record Found(Optional<List<Pattern>> sticks, boolean searched, double leastLoss) {}

  /**
   * @param patterns every pattern that loses no more than is allowed
   * @param values prices of the pieces
   * @param most the most that a plan may lose
   * @param unit every cost is a multiple of it
   */
  LossSearch(
      CuttingProblem problem, List<Pattern> patterns, double[] values, double most, double unit) {
    this.problem = problem;
    this.patterns = patterns;
    this.most = most;
    this.unit = unit;
    int size = values.length;
    for (Pattern pattern : patterns) {
      int[] column = new int[size];
      Arrays.setAll(column, pattern::count);
      columns.add(column);
      long cost = problem.sticks().get(pattern.stick()).cost();
      losses.add(Math.max(0, cost - pattern.worth(values)));
    }
    // A piece too many is lost at its price.
    for (int i = 0; i < size; i++) {
      int[] column = new int[size];
      column[i] = -1;
      columns.add(column);
      losses.add(values[i]);
    }
  }

  Found found() {
    List<Integer> byLoss = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      byLoss.add(i);
    }
    byLoss.sort(Comparator.comparingDouble(losses::get));
    return Basis.of(byLoss.stream().map(columns::get).toList(), problem.demands().size())
        .map(chosen -> found(chosen, byLoss))
        .orElse(NOTHING);
  }

  private Found found(Basis chosen, List<Integer> byLoss) {
    basis = chosen;
    Lattice lattice = new Lattice(basis.columns());
    OptionalInt count = lattice.kinds(MOST_KINDS);
    List<Integer> others = new ArrayList<>(byLoss);
    basis.places().stream().map(byLoss::get).forEach(others::remove);
    others.removeIf(each -> losses.get(each) > most + HAIR);
    if (count.isEmpty() || (long) count.getAsInt() * others.size() > MOST_FILLED) {
      return NOTHING;
    }
    order = others.stream().mapToInt(Integer::intValue).toArray();
    kinds =
        Arrays.stream(order)
            .mapToObj(each -> lattice.digits(columns.get(each)))
            .toArray(int[][]::new);
    double[] lost = Arrays.stream(order).mapToDouble(losses::get).toArray();
    least = new LeastLoss(lattice.moduli(), count.getAsInt(), kinds, lost, most + HAIR);
    int[] heap = problem.demands().stream().mapToInt(PieceDemand::count).toArray();
    return deepened(heap, lattice.digits(heap));
  }

  /** Lets a plan lose a little more from round to round, until one is found or none is left. */
  private Found deepened(int[] heap, int[] digits) {
    double allowed = most;
    double leastLoss = Math.min(allowed + unit, least.of(least.kind(digits)));
    double step = Math.max(unit, (allowed - leastLoss) / ROUNDS);
    while (leastLoss <= allowed + HAIR) {
      double limit = Math.min(allowed, leastLoss + step);
      most = limit;
      from(0, digits, 0, heap);
      if (work >= MOST_WORK) {
        return new Found(best, false, leastLoss);
      }
      if (best.isPresent()) {
        return new Found(best, true, leastLoss);
      }
      leastLoss = limit < allowed ? limit : allowed + unit;
    }
    return new Found(best, true, leastLoss);
  }

  private void from(int first, int[] digits, double lost, int[] heap) {
    if (least.kind(digits) == 0) {
      basis.madeUp(heap).ifPresent(times -> keep(times, lost));
    }
    if (taken.size() >= MOST_TAKEN) {
      work = MOST_WORK;
    }
    for (int i = first; i < order.length && work < MOST_WORK; i++) {
      work++;
      double loss = lost + losses.get(order[i]);
      if (loss > most + HAIR) {
        return;
      }
      int kind = least.kind(digits, kinds[i], -1);
      if (loss + least.of(kind) <= most + HAIR && stillNeeded(order[i], heap)) {
        taken.add(order[i]);
        from(i, least.digits(kind), loss, without(heap, columns.get(order[i])));
        taken.remove(taken.size() - 1);
      }
    }
  }

  /** A pattern none of whose pieces is wanted any more is in no plan. */
  private boolean stillNeeded(int place, int[] heap) {
    int[] column = columns.get(place);
    for (int i = 0; i < heap.length; i++) {
      if (column[i] > 0 && heap[i] > 0) {
        return true;
      }
    }
    return place >= patterns.size();
  }

  private static int[] without(int[] heap, int[] column) {
    int[] rest = heap.clone();
    Arrays.setAll(rest, i -> heap[i] - column[i]);
    return rest;
  }

  private void keep(int[] times, double lost) {
    List<Pattern> sticks = new ArrayList<>();
    taken.stream().filter(each -> each < patterns.size()).map(patterns::get).forEach(sticks::add);
    double loss = lost;
    for (int j = 0; j < times.length; j++) {
      int place = columns.indexOf(basis.columns()[j]);
      loss += times[j] * losses.get(place);
      for (int i = 0; i < times[j] && place < patterns.size(); i++) {
        sticks.add(patterns.get(place));
      }
    }
    if (loss <= most + HAIR) {
      best = Optional.of(sticks);
      most = loss - unit;
    }
  }
}
