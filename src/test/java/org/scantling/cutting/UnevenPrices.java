package org.scantling.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Jobs of 200 pieces at prices that do not go by the foot. */
final class UnevenPrices {
  private static final int SIXTEENTHS = 16;
  private static final int LENGTHS = 12;
  private static final int PIECES = 200;
  private static final int CENTS_A_FOOT = 90;

  private UnevenPrices() {}

  /** Pieces of 1 ft to 12 ft 6 in from sticks of 8 to 16 ft at 90 to 130 cents a foot. */
  static CuttingProblem job(Random random) {
    List<Integer> lengths =
        random.ints(12 * SIXTEENTHS, 150 * SIXTEENTHS).distinct().limit(LENGTHS).boxed().toList();
    int[] counts = new int[LENGTHS];
    Arrays.fill(counts, 1);
    for (int i = LENGTHS; i < PIECES; i++) {
      counts[random.nextInt(LENGTHS)]++;
    }
    List<PieceDemand> demands = new ArrayList<>();
    for (int i = 0; i < LENGTHS; i++) {
      demands.add(new PieceDemand(lengths.get(i), counts[i]));
    }
    List<Stick> sticks = new ArrayList<>();
    for (int feet = 8; feet <= 16; feet += 2) {
      long cents = (long) feet * CENTS_A_FOOT + random.nextInt(40 * feet);
      sticks.add(new Stick(feet * 12 * SIXTEENTHS, cents));
    }
    return new CuttingProblem(demands, sticks, new Allowance(2, 4, 0));
  }
}
