package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * How long 200 pieces of 12 lengths over 5 stock lengths take, and how near to the bound they come:
 * {@code java -cp ... org.scantling.cutting.CuttingStockBenchmark [jobs]}. Not a test: a machine
 * has its good days and its bad.
 */
public final class CuttingStockBenchmark {
  private static final int SIXTEENTHS = 16;
  private static final int LENGTHS = 12;
  private static final int PIECES = 200;

  private CuttingStockBenchmark() {}

  public static void main(String[] args) {
    int jobs = args.length > 0 ? Integer.parseInt(args[0]) : 25;
    Random random = new Random(1961);
    int proven = 0;
    double worstGap = 0;
    double slowest = 0;
    double all = 0;
    for (int i = 0; i < jobs; i++) {
      CuttingProblem job = job(random);
      long start = System.nanoTime();
      CuttingPlan plan = CuttingStock.solve(job);
      double seconds = (System.nanoTime() - start) / 1e9;
      proven += plan.proven() ? 1 : 0;
      worstGap = Math.max(worstGap, plan.gapRatio());
      slowest = Math.max(slowest, seconds);
      all += seconds;
    }
    System.out.printf(
        Locale.ROOT,
        "%d of %d proven, worst gap %.2f %%, slowest %.2f s, mean %.2f s%n",
        proven,
        jobs,
        100 * worstGap,
        slowest,
        all / jobs);
  }

  /** Pieces of 1 to 15 ft from sticks of 8 to 16 ft, at the least waste. */
  static CuttingProblem job(Random random) {
    List<Integer> lengths =
        random.ints(12 * SIXTEENTHS, 180 * SIXTEENTHS).distinct().limit(LENGTHS).boxed().toList();
    int[] counts = new int[LENGTHS];
    java.util.Arrays.fill(counts, 1);
    for (int i = LENGTHS; i < PIECES; i++) {
      counts[random.nextInt(LENGTHS)]++;
    }
    List<PieceDemand> demands = new ArrayList<>();
    for (int i = 0; i < LENGTHS; i++) {
      demands.add(new PieceDemand(lengths.get(i), counts[i]));
    }
    List<Stick> sticks = new ArrayList<>();
    for (int feet = 8; feet <= 16; feet += 2) {
      sticks.add(new Stick(feet * 12 * SIXTEENTHS, feet));
    }
    return new CuttingProblem(demands, sticks, new Allowance(2, 4, 0));
  }
}
