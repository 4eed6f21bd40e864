package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Jobs of 200 pieces at prices that do not go by the foot. */
final class UnevenPrices {
  private UnevenPrices() {}

  /** The pieces of the benchmark's job, from sticks of 8 to 16 ft at 90 to 130 cents a foot. */
  static CuttingProblem job(Random random) {
    CuttingProblem even = CuttingStockBenchmark.job(random);
    List<Stick> sticks = new ArrayList<>();
    for (Stick each : even.sticks()) {
      sticks.add(new Stick(each.lengthTicks(), each.cost() * (90 + random.nextInt(41))));
    }
    return new CuttingProblem(even.demands(), sticks, even.allowance());
  }
}
