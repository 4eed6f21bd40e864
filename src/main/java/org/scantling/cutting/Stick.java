package org.scantling.cutting;

/**
 * A length that is sold, in any number.
 *
 * @param lengthTicks as it comes, above 0
 * @param cost what one costs, above 0
 */
public record Stick(int lengthTicks, long cost) {
  public Stick {
    if (lengthTicks <= 0 || cost <= 0) {
      throw new IllegalArgumentException(
          "a stick of " + lengthTicks + " ticks for " + cost + ": both must be above 0");
    }
  }
}
