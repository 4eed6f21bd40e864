package org.scantling.drawing;

/** A place on the sheet. */
public record PaperPoint(double rightPx, double downPx) {
  PaperPoint plus(double moreRightPx, double moreDownPx) {
    return new PaperPoint(rightPx + moreRightPx, downPx + moreDownPx);
  }

  double toPx(PaperPoint other) {
    return Math.hypot(other.rightPx - rightPx, other.downPx - downPx);
  }

  PaperPoint towards(PaperPoint other, double shareRatio) {
    return plus(shareRatio * (other.rightPx - rightPx), shareRatio * (other.downPx - downPx));
  }
}
