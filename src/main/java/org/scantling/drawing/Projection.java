package org.scantling.drawing;

import org.scantling.design.Point;

/** From which side the structure is looked at. */
enum Projection {
  /** From outside row A, the first post on the left. */
  SIDE {
    @Override
    ScenePoint of(Point point) {
      return new ScenePoint(point.alongIn(), point.upIn());
    }
  },
  /** From the first post along the walk: row B on the left, as one stands there. */
  END {
    @Override
    ScenePoint of(Point point) {
      return new ScenePoint(-point.acrossIn(), point.upIn());
    }
  },
  /** From above, row A at the bottom. */
  PLAN {
    @Override
    ScenePoint of(Point point) {
      return new ScenePoint(point.alongIn(), point.acrossIn());
    }
  };

  abstract ScenePoint of(Point point);
}
