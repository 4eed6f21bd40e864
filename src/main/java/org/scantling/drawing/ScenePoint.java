package org.scantling.drawing;

/**
 * A place in a view, in inches of the structure.
 *
 * @param rightIn to the right as the sheet is read
 * @param upIn towards its top
 */
record ScenePoint(double rightIn, double upIn) {
  ScenePoint plus(double moreRightIn, double moreUpIn) {
    return new ScenePoint(rightIn + moreRightIn, upIn + moreUpIn);
  }

  /** The point at that share of the way to another. */
  ScenePoint towards(ScenePoint other, double shareRatio) {
    return plus(shareRatio * (other.rightIn - rightIn), shareRatio * (other.upIn - upIn));
  }
}
