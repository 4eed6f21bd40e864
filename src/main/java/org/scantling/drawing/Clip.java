package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** What of an area or a line lies in one stretch of the walk. */
final class Clip {
  private Clip() {}

  /** By Sutherland and Hodgman: an area that the edge cuts twice stays one area. */
  static List<ScenePoint> area(List<ScenePoint> corners, Windows.Stretch stretch) {
    return edge(edge(corners, stretch.fromIn(), 1), stretch.toIn(), -1);
  }

  private static List<ScenePoint> edge(List<ScenePoint> corners, double edgeIn, int keep) {
    if (Double.isInfinite(edgeIn)) {
      return corners;
    }
    List<ScenePoint> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      ScenePoint from = corners.get(i);
      ScenePoint to = corners.get((i + 1) % corners.size());
      boolean holdsFrom = keep * (from.rightIn() - edgeIn) >= 0;
      boolean holdsTo = keep * (to.rightIn() - edgeIn) >= 0;
      if (holdsFrom) {
        kept.add(from);
      }
      if (holdsFrom != holdsTo) {
        kept.add(at(from, to, edgeIn));
      }
    }
    return kept;
  }

  /** Two points, or none. */
  static List<ScenePoint> line(ScenePoint from, ScenePoint to, Windows.Stretch stretch) {
    ScenePoint left = from.rightIn() <= to.rightIn() ? from : to;
    ScenePoint right = left.equals(from) ? to : from;
    if (left.rightIn() > stretch.toIn() || right.rightIn() < stretch.fromIn()) {
      return List.of();
    }
    ScenePoint first = stretch.holds(left.rightIn()) ? left : at(left, right, stretch.fromIn());
    ScenePoint last = stretch.holds(right.rightIn()) ? right : at(left, right, stretch.toIn());
    return List.of(first, last);
  }

  private static ScenePoint at(ScenePoint from, ScenePoint to, double rightIn) {
    return from.towards(to, (rightIn - from.rightIn()) / (to.rightIn() - from.rightIn()));
  }
}
