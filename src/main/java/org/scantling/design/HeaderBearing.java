package org.scantling.design;

/**
 * Where a header on top of its posts bears on one of them, along the header.
 *
 * @param fromIn where it begins, from the middle of the run's first post
 * @param toIn where it ends
 * @param opensFirst true where the header ends there, so that a notch is open at its first end
 * @param opensLast true where a notch is open at its last end
 */
public record HeaderBearing(double fromIn, double toIn, boolean opensFirst, boolean opensLast) {
  private static final double HAIR = 1e-6;

  /**
   * @param postIn breadth of the post along the header
   */
  public static HeaderBearing of(HeaderPiece run, int post, double postIn) {
    double nearIn = run.postIn(post) - postIn / 2;
    double farIn = run.postIn(post) + postIn / 2;
    double fromIn = Math.max(nearIn, run.firstIn());
    double toIn = Math.min(farIn, run.lastIn());
    return new HeaderBearing(
        fromIn, toIn, run.firstIn() > nearIn - HAIR, run.lastIn() < farIn + HAIR);
  }

  /** 0 where the header only meets the side of the post. */
  public double lengthIn() {
    // The last bits would make two marks of one piece.
    return Math.max(0, Math.rint((toIn - fromIn) / HAIR) * HAIR);
  }

  public double middleIn() {
    return (fromIn + toIn) / 2;
  }

  /** True where it bears on the whole post. */
  public boolean whole() {
    return !opensFirst && !opensLast;
  }
}
