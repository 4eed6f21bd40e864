package org.scantling.cutting;

import java.util.List;

/**
 * Sticks cut alike.
 *
 * @param stick the length bought
 * @param counts pieces of each demand from one stick, in the order of the problem
 * @param times how many sticks
 */
public record Cut(Stick stick, List<Integer> counts, int times) {
  public Cut {
    counts = List.copyOf(counts);
  }

  /** Pieces from one stick. */
  public int pieces() {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }
}
