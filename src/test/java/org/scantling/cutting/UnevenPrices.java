package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Jobs of 200 pieces at prices that do not go by the foot. */
final class UnevenPrices {
  private static final int CENTS_A_FOOT = 90;

  private UnevenPrices() {}

  /** The benchmark's pieces; sticks at 90 to 130 cents a foot, to the cent. */
  static CuttingProblem job(Random random) {
    CuttingProblem even = CuttingStockBenchmark.job(random);
    List<Stick> sticks = new ArrayList<>();
    for (Stick each : even.sticks()) {
      int feet = (int) each.cost();
      long cents = (long) feet * CENTS_A_FOOT + random.nextInt(40 * feet);
      sticks.add(new Stick(each.lengthTicks(), cents));
    }
    return new CuttingProblem(even.demands(), sticks, even.allowance());
  }
}
