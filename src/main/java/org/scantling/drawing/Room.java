package org.scantling.drawing;

/**
 * For what a drawing is laid out: the same is drawn in each, and the writing is as large; in less
 * room the scale is smaller and more of a long walk is left out.
 */
public enum Room {
  /** A file of its own, or a wide page. */
  WIDE(800, 540, 96),
  /** A page of letter paper. */
  PAPER(590, 280, 70),
  /** The screen of a telephone held upright. */
  PHONE(268, 178, 24);

  private final double widePx;
  private final double acrossPx;
  private final double groundPx;

  Room(double widePx, double acrossPx, double groundPx) {
    this.widePx = widePx;
    this.acrossPx = acrossPx;
    this.groundPx = groundPx;
  }

  /** Width for the walk itself, without the dimensions beside it. */
  double widePx() {
    return widePx;
  }

  /** Ground that is drawn past the tips of the headers. */
  double groundPx() {
    return groundPx;
  }

  /** Width for a view across the walk, which has more beside it. */
  double acrossPx() {
    return acrossPx;
  }
}
