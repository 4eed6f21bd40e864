package org.scantling.tables;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What is left on a post until its top is cut where it stands.
 *
 * @param usualIn usually left
 * @param leastIn left at least, where that lets the post come out of a shorter stick
 */
public record TopSpare(double usualIn, double leastIn) {
  /**
   * The stick that is worth leaving less for; empty where the usual spare costs no longer one.
   *
   * @param longestIn finished length of the longest post
   * @param soldIn lengths that are sold, shortest first
   */
  public OptionalDouble shorterStickIn(double longestIn, List<Double> soldIn) {
    OptionalDouble usual = holding(longestIn + usualIn, soldIn);
    OptionalDouble least = holding(longestIn + leastIn, soldIn);
    boolean shorter =
        least.isPresent()
            && (usual.isEmpty() || least.getAsDouble() < usual.getAsDouble() - Sold.HAIR_IN / 2);
    return shorter ? least : OptionalDouble.empty();
  }

  /** The length to which a post is cut before it is set up. */
  public double cutIn(double longestIn, List<Double> soldIn) {
    return shorterStickIn(longestIn, soldIn).orElse(longestIn + usualIn);
  }

  private static OptionalDouble holding(double lengthIn, List<Double> soldIn) {
    return soldIn.stream()
        .mapToDouble(Double::doubleValue)
        .filter(each -> Sold.holds(each, lengthIn))
        .findFirst();
  }
}
