package org.scantling.tables;

import java.util.function.ToDoubleFunction;

/**
 * What a hole is dug deeper for than its post reaches.
 *
 * @param gravelIn of gravel
 * @param padIn of the flat stone or pad on it; 0 where concrete holds the post
 */
public record PostBed(double gravelIn, double padIn) {
  /**
   * @param shop a length of the shop table, rounded as whoever says it reads a tape
   * @param padded true where no concrete holds the post
   */
  public static PostBed of(ToDoubleFunction<String> shop, boolean padded) {
    return new PostBed(
        shop.applyAsDouble("footing.gravel-bed"),
        padded ? shop.applyAsDouble("footing.pad-thickness") : 0);
  }

  /** Nothing lies under a foot that stands on rock. */
  public static PostBed onRock() {
    return new PostBed(0, 0);
  }

  public double depthIn() {
    return gravelIn + padIn;
  }
}
