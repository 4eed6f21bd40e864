package org.scantling.design;

/**
 * A stretch of the walk in which no post may stand: a gate, a root, a pipe.
 *
 * @param fromIn where it begins, from the center of the first post along the walk
 * @param toIn where it ends; a post may stand at either end of it, with its center
 */
public record FreeStretch(double fromIn, double toIn) {
  /**
   * @throws IllegalArgumentException where it does not end farther on than it begins
   */
  public FreeStretch {
    if (!(fromIn < toIn)) {
      throw new IllegalArgumentException(
          "a stretch ends farther on than it begins, found " + fromIn + " to " + toIn);
    }
  }

  /** How far in that place lies from the nearer end; 0 where it lies outside. */
  public double insideIn(double alongIn) {
    return Math.max(0, Math.min(alongIn - fromIn, toIn - alongIn));
  }

  /** How far outside that place lies from the nearer end; 0 where it lies inside. */
  public double outsideIn(double alongIn) {
    return Math.max(0, Math.max(fromIn - alongIn, alongIn - toIn));
  }
}
