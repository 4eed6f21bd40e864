package org.scantling.cutting;

import java.util.ArrayList;
import java.util.List;

/** The least cost of a few pieces, by trying every way of sharing them out among sticks. */
final class BruteForce {
  private final CuttingProblem problem;
  private final List<Integer> pieces = new ArrayList<>();

  private BruteForce(CuttingProblem problem) {
    this.problem = problem;
    for (PieceDemand demand : problem.demands()) {
      for (int i = 0; i < demand.count(); i++) {
        pieces.add(demand.lengthTicks());
      }
    }
  }

  static long leastCost(CuttingProblem problem) {
    return new BruteForce(problem).leastCost();
  }

  /** Least cost of every set of pieces: one stick for some of them, and the least for the rest. */
  private long leastCost() {
    int all = (1 << pieces.size()) - 1;
    long[] onOne = new long[all + 1];
    long[] least = new long[all + 1];
    for (int set = 1; set <= all; set++) {
      onOne[set] = cheapestStick(set);
      least[set] = onOne[set];
      int first = Integer.lowestOneBit(set);
      for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
        if ((part & first) != 0
            && onOne[part] < Long.MAX_VALUE
            && least[set ^ part] < Long.MAX_VALUE) {
          least[set] = Math.min(least[set], onOne[part] + least[set ^ part]);
        }
      }
    }
    return least[all];
  }

  private long cheapestStick(int set) {
    Allowance allowance = problem.allowance();
    int count = Integer.bitCount(set);
    int used = 0;
    for (int i = 0; i < pieces.size(); i++) {
      used += (set >> i & 1) * pieces.get(i);
    }
    long cheapest = Long.MAX_VALUE;
    for (Stick stick : problem.sticks()) {
      int needed =
          count == 1
              ? used
              : used
                  + (count - 1) * allowance.kerfTicks()
                  + 2 * allowance.endTrimTicks()
                  + allowance.knotsTicks();
      if (needed <= stick.lengthTicks()) {
        cheapest = Math.min(cheapest, stick.cost());
      }
    }
    return cheapest;
  }
}
