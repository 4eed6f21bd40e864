package org.scantling.confirm;

import org.scantling.design.Bays;
import org.scantling.design.Geometry;

/** What of a walk stands square to the wind, as far as it leans on the hardest-pressed post. */
final class WindFaces {
  private final Geometry geometry;
  private final WindOnWalk.Sides sides;

  WindFaces(Geometry geometry, WindOnWalk.Sides sides) {
    this.geometry = geometry;
    this.sides = sides;
  }

  /** The part of a side that leans on the hardest-pressed post. */
  WindFace side() {
    double endsIn2 =
        geometry.breadthPerSpacingIn()
            * geometry.crossbeams().depthIn()
            * headerShareIn()
            / geometry.crossbeamSpacingIn();
    return new WindFace(
        geometry.headers().depthIn() * headerShareIn(),
        endsIn2,
        postIn2(),
        sides.railDepthIn() * betweenPostsIn(),
        picketIn2(),
        picketTopRatio(),
        Math.max(tributaryIn(), headerShareIn()),
        geometry.overallHeightIn());
  }

  /** One crossbeam with its two posts, seen along the walk. */
  WindFace gable() {
    return new WindFace(
        crossbeamIn2(),
        0,
        2 * postIn2(),
        0,
        0,
        0,
        geometry.crossbeamLengthIn(),
        geometry.overallHeightIn());
  }

  private double picketIn2() {
    double longIn = Math.max(0, headerUndersideIn() - sides.railTopIn());
    return mostPicketsPerIn() * sides.picketBreadthIn() * longIn * tributaryIn();
  }

  /**
   * Where they stand closest: every bay is divided so that none stand wider than in the longest.
   */
  private double mostPicketsPerIn() {
    Bays bays = geometry.plan().along();
    int inLongest = (int) Math.round(sides.pickets()) + 1;
    double most = sides.pickets() / bays.longestIn();
    for (int bay = 0; bay < bays.count() && !bays.even(); bay++) {
      most = Math.max(most, (bays.spacesIn(bay, inLongest) - 1) / bays.lengthIn(bay));
    }
    return most;
  }

  /** By moments about the foot: half of it at the header, half at the rail. */
  private double picketTopRatio() {
    double middleIn = geometry.posts().heightIn() / 2;
    double leverIn = headerMiddleIn() - middleIn;
    double overIn = (headerMiddleIn() + sides.railMiddleIn()) / 2 - middleIn;
    return sides.railDepthIn() > 0 ? Math.min(1, Math.max(0, overIn / leverIn)) : 0;
  }

  private double crossbeamIn2() {
    return geometry.crossbeamLengthIn() * geometry.crossbeams().depthIn();
  }

  private double postIn2() {
    return geometry.posts().breadthIn() * geometry.posts().heightIn();
  }

  private double headerUndersideIn() {
    return geometry.headerTopIn() - geometry.headers().depthIn();
  }

  double headerMiddleIn() {
    return geometry.headerTopIn() - geometry.headers().depthIn() / 2;
  }

  double crossbeamMiddleIn() {
    return geometry.crossbeamUndersideIn() + geometry.crossbeams().depthIn() / 2;
  }

  /** Length of side that leans on the hardest-pressed post. */
  double tributaryIn() {
    return geometry.plan().along().tributaryIn();
  }

  /** As much of it as is clear of the posts. */
  private double betweenPostsIn() {
    double breadthIn = geometry.posts().breadthIn();
    return tributaryIn() - (geometry.plan().bays() > 1 ? breadthIn : breadthIn / 2);
  }

  /** Length of header, tail included, that leans on it. */
  double headerShareIn() {
    Bays bays = geometry.plan().along();
    double endBayIn = Math.max(bays.lengthIn(0), bays.lengthIn(bays.count() - 1));
    return Math.max(bays.tributaryIn(), endBayIn / 2 + geometry.headerTailIn());
  }
}
