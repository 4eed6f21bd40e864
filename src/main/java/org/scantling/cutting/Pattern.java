package org.scantling.cutting;

import java.util.Arrays;

/** One way of cutting a stick: how many pieces of each demand. */
final class Pattern {
  private final int stick;
  private final int[] counts;

  /**
   * @param stick place of the stick in the problem
   * @param counts pieces of each demand, in the order of the problem; copied
   */
  Pattern(int stick, int[] counts) {
    this.stick = stick;
    this.counts = counts.clone();
  }

  /** One piece on its own. */
  static Pattern single(int stick, int demand, int demands) {
    int[] counts = new int[demands];
    counts[demand] = 1;
    return new Pattern(stick, counts);
  }

  int stick() {
    return stick;
  }

  int count(int demand) {
    return counts[demand];
  }

  int pieces() {
    return Arrays.stream(counts).sum();
  }

  /** What its pieces are worth together. */
  double worth(double[] values) {
    double sum = 0;
    for (int i = 0; i < counts.length; i++) {
      sum += counts[i] * values[i];
    }
    return sum;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pattern that
        && stick == that.stick
        && Arrays.equals(counts, that.counts);
  }

  @Override
  public int hashCode() {
    return 31 * stick + Arrays.hashCode(counts);
  }

  @Override
  public String toString() {
    return stick + Arrays.toString(counts);
  }
}
