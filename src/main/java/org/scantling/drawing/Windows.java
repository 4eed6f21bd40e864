package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Which stretches of a long walk are drawn, and where each comes to lie on the sheet: all of it, or
 * both ends with the middle broken out.
 *
 * @param scalePxPerIn of the drawing
 */
record Windows(double scalePxPerIn, List<Stretch> stretches) {
  /** Width of the gap in the middle. */
  static final double GAP_PX = 34;

  private static final int LEAST_BAYS = 4;

  /** Beside the middle of a bay, where a crossbeam often lies. */
  private static final double BREAK_RATIO = 0.46;

  Windows {
    stretches = List.copyOf(stretches);
  }

  /**
   * @param fromIn where it begins in the structure
   * @param toIn where it ends
   * @param shiftPx where the start of the structure would lie
   */
  record Stretch(double fromIn, double toIn, double shiftPx) {
    boolean holds(double rightIn) {
      return rightIn >= fromIn && rightIn <= toIn;
    }
  }

  /**
   * All of a walk as large as fits, or its ends where the whole would be too small to read.
   *
   * @param alongIn posts from the first on
   * @param tailIn what is drawn beyond the end posts
   * @param roomPx width of the sheet
   * @param leastPxPerIn smallest scale that can be read
   * @param mostPxPerIn largest that is wanted
   */
  static Windows fitting(
      List<Double> alongIn, double tailIn, double roomPx, double leastPxPerIn, double mostPxPerIn) {
    int bays = alongIn.size() - 1;
    double wholeIn = alongIn.get(bays) + 2 * tailIn;
    double scale = Math.min(mostPxPerIn, roomPx / wholeIn);
    if (scale >= leastPxPerIn || bays < LEAST_BAYS) {
      return whole(scale);
    }
    int keep = (bays - 1) / 2;
    while (keep > 1 && keptIn(alongIn, keep) + 2 * tailIn > (roomPx - GAP_PX) / leastPxPerIn) {
      keep--;
    }
    double keptIn = keptIn(alongIn, keep) + 2 * tailIn;
    return broken(
        Math.min(mostPxPerIn, (roomPx - GAP_PX) / keptIn),
        breakIn(alongIn, keep, BREAK_RATIO),
        breakIn(alongIn, bays - 1 - keep, 1 - BREAK_RATIO));
  }

  private static double keptIn(List<Double> alongIn, int keep) {
    int bays = alongIn.size() - 1;
    return breakIn(alongIn, keep, BREAK_RATIO)
        + alongIn.get(bays)
        - breakIn(alongIn, bays - 1 - keep, 1 - BREAK_RATIO);
  }

  private static double breakIn(List<Double> alongIn, int bay, double shareRatio) {
    return alongIn.get(bay) + shareRatio * (alongIn.get(bay + 1) - alongIn.get(bay));
  }

  /** Only what lies at both ends of a walk of four bays or more; a shorter one is drawn whole. */
  static Windows ends(List<Double> alongIn, double scalePxPerIn) {
    int bays = alongIn.size() - 1;
    return bays < LEAST_BAYS
        ? whole(scalePxPerIn)
        : broken(
            scalePxPerIn,
            breakIn(alongIn, 1, BREAK_RATIO),
            breakIn(alongIn, bays - 2, 1 - BREAK_RATIO));
  }

  static Windows whole(double scalePxPerIn) {
    return new Windows(
        scalePxPerIn, List.of(new Stretch(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0)));
  }

  /** With what lies between two places left out. */
  static Windows broken(double scalePxPerIn, double fromIn, double toIn) {
    double leftOutPx = (toIn - fromIn) * scalePxPerIn;
    return new Windows(
        scalePxPerIn,
        List.of(
            new Stretch(Double.NEGATIVE_INFINITY, fromIn, 0),
            new Stretch(toIn, Double.POSITIVE_INFINITY, GAP_PX - leftOutPx)));
  }

  boolean isBroken() {
    return stretches.size() > 1;
  }

  /** True where a place is drawn. */
  boolean shows(double rightIn) {
    return stretches.stream().anyMatch(each -> each.holds(rightIn));
  }

  /** True where two places are drawn, and all that lies between them. */
  boolean together(double oneIn, double otherIn) {
    return stretches.stream().anyMatch(each -> each.holds(oneIn) && each.holds(otherIn));
  }

  /** Where a place lies on the sheet; in the gap where it is left out. */
  double rightPx(double rightIn) {
    for (Stretch each : stretches) {
      if (each.holds(rightIn)) {
        return rightIn * scalePxPerIn + each.shiftPx();
      }
    }
    return breaksPx().stream().mapToDouble(each -> each).average().orElse(0);
  }

  /** Where the edges of the gap lie. */
  List<Double> breaksPx() {
    List<Double> breaks = new ArrayList<>();
    for (int i = 0; i + 1 < stretches.size(); i++) {
      Stretch before = stretches.get(i);
      Stretch after = stretches.get(i + 1);
      breaks.add(before.toIn() * scalePxPerIn + before.shiftPx());
      breaks.add(after.fromIn() * scalePxPerIn + after.shiftPx());
    }
    return breaks;
  }
}
