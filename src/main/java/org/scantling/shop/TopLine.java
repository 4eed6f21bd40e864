package org.scantling.shop;

import org.scantling.design.Geometry;
import org.scantling.design.WayOfBuilding;

/**
 * How the ground falls and how the top runs over it, post by post: level, in one plane with the
 * ground, or in level steps. A fall counts positive from the first post to the last.
 */
final class TopLine {
  private final Geometry geometry;
  private final String kind;
  private final double slopeRatio;
  private final double intoGroundIn;

  TopLine(Built built) {
    this.geometry = built.geometry();
    this.kind = built.topLine();
    this.slopeRatio = built.slopeRatio();
    this.intoGroundIn =
        built.inTheGround()
            ? built.footings().depthIn()
            : -built.tables().thumb("footing.bracket-clearance").amount();
  }

  boolean follows() {
    return kind.equals(WayOfBuilding.FOLLOWS_GROUND);
  }

  boolean stepped() {
    return kind.equals(WayOfBuilding.STEPPED);
  }

  double slopeRatio() {
    return slopeRatio;
  }

  int posts() {
    return geometry.plan().bays() + 1;
  }

  double alongIn(int post) {
    return post * geometry.plan().bayIn();
  }

  double groundIn(int post) {
    return -slopeRatio * alongIn(post);
  }

  /**
   * Underside of the post. Under a level top all holes go down to one level, that of the lowest
   * ground, so that all posts are alike.
   */
  double footIn(int post) {
    boolean oneLevel = !follows() && !stepped() && intoGroundIn > 0;
    return (oneLevel ? lowestGroundIn() : groundIn(post)) - intoGroundIn;
  }

  /** Top of the post at its middle. */
  double topIn(int post) {
    if (stepped()) {
      // The first post carries only the bay below it; every other carries the one above it too.
      return post == 0 ? seatIn(0) : seatIn(post - 1);
    }
    return geometry.posts().heightIn() + (follows() ? groundIn(post) : highestGroundIn());
  }

  /** Where the tops are stepped: the level at which the header of a bay meets its posts. */
  double seatIn(int bay) {
    return geometry.posts().heightIn() + groundIn(bay + 1);
  }

  /** Depth of the foot below the post's own ground; negative where it stands above it. */
  double belowGroundIn(int post) {
    return groundIn(post) - footIn(post);
  }

  /** Fall of the headers over their length in plan. */
  double headerFallRatio() {
    return follows() ? slopeRatio : 0;
  }

  /** Length along the header over length in plan. */
  double stretchRatio() {
    return Math.hypot(1, headerFallRatio());
  }

  double degrees() {
    return Math.toDegrees(Math.atan(headerFallRatio()));
  }

  private double lowestGroundIn() {
    return Math.min(groundIn(0), groundIn(posts() - 1));
  }

  private double highestGroundIn() {
    return Math.max(groundIn(0), groundIn(posts() - 1));
  }
}
