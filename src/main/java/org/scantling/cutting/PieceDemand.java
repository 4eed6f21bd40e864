package org.scantling.cutting;

/**
 * Pieces of one length.
 *
 * @param lengthTicks finished length, above 0
 * @param count how many, above 0
 */
public record PieceDemand(int lengthTicks, int count) {
  public PieceDemand {
    if (lengthTicks <= 0 || count <= 0) {
      throw new IllegalArgumentException(
          count + " pieces of " + lengthTicks + " ticks: both must be above 0");
    }
  }
}
