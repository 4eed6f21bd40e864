package org.scantling.shop;

import java.util.List;

/**
 * Sticks cut alike.
 *
 * @param lengthIn as bought
 * @param times how many sticks
 * @param marks what each is cut into, in order
 * @param ends how its two ends are cut
 */
public record StickCut(double lengthIn, int times, List<String> marks, Ends ends) {
  public StickCut {
    marks = List.copyOf(marks);
  }

  /** What is cut off the ends of a stick. */
  public enum Ends {
    /** Both are squared. */
    BOTH,
    /** One piece leaves too little to square both: one is cut, the other stays as it came. */
    ONE,
    /** One piece leaves less than a saw takes off, or nothing: neither is cut. */
    NEITHER
  }
}
