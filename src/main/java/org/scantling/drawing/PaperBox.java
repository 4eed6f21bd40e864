package org.scantling.drawing;

import java.util.List;

/** A box on the sheet. */
public record PaperBox(double leftPx, double topPx, double rightPx, double bottomPx) {

  static PaperBox around(List<PaperPoint> points) {
    return new PaperBox(
        points.stream().mapToDouble(PaperPoint::rightPx).min().orElseThrow(),
        points.stream().mapToDouble(PaperPoint::downPx).min().orElseThrow(),
        points.stream().mapToDouble(PaperPoint::rightPx).max().orElseThrow(),
        points.stream().mapToDouble(PaperPoint::downPx).max().orElseThrow());
  }

  PaperBox grown(double byPx) {
    return new PaperBox(leftPx - byPx, topPx - byPx, rightPx + byPx, bottomPx + byPx);
  }

  PaperBox with(PaperBox other) {
    return new PaperBox(
        Math.min(leftPx, other.leftPx),
        Math.min(topPx, other.topPx),
        Math.max(rightPx, other.rightPx),
        Math.max(bottomPx, other.bottomPx));
  }

  boolean meets(PaperBox other) {
    return leftPx < other.rightPx
        && other.leftPx < rightPx
        && topPx < other.bottomPx
        && other.topPx < bottomPx;
  }

  /** True where any of a stroke lies in the box. */
  boolean meets(PaperPoint from, PaperPoint to) {
    double[] share = {0, 1};
    double rightPx = to.rightPx() - from.rightPx();
    double downPx = to.downPx() - from.downPx();
    return within(share, -rightPx, from.rightPx() - leftPx)
        && within(share, rightPx, this.rightPx - from.rightPx())
        && within(share, -downPx, from.downPx() - topPx)
        && within(share, downPx, bottomPx - from.downPx());
  }

  /** Cuts a stroke to one side of the box, as Liang and Barsky do; false where none is left. */
  private static boolean within(double[] share, double runPx, double roomPx) {
    if (runPx == 0) {
      return roomPx > 0;
    }
    double at = roomPx / runPx;
    if (runPx < 0) {
      share[0] = Math.max(share[0], at);
    } else {
      share[1] = Math.min(share[1], at);
    }
    return share[0] < share[1];
  }
}
