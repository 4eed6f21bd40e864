package org.scantling.design;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How the ground falls and how the top runs over it, post by post: level, in one plane with the
 * ground, or in level steps. A fall counts positive from the first post to the last.
 *
 * @param kind level, follows-ground or stepped
 * @param slopeRatio fall of the ground over its length in plan
 * @param intoGroundIn depth of the foot below the ground, negative where it stands above it
 */
public record TopLine(Geometry geometry, String kind, double slopeRatio, double intoGroundIn) {

  public boolean follows() {
    return kind.equals(WayOfBuilding.FOLLOWS_GROUND);
  }

  public boolean stepped() {
    return kind.equals(WayOfBuilding.STEPPED);
  }

  /** True where the headers of two bays meet a post at two levels. */
  public boolean stepsAt(int post) {
    return stepped() && post > 0 && post < posts() - 1;
  }

  /** What the ground falls over the longest bay, where the top is stepped: no step is higher. */
  public double stepIn() {
    return stepped() ? slopeRatio * geometry.plan().bayIn() : 0;
  }

  /** Fall from the header of the bay before a post to that of the bay after it. */
  public double stepIn(int post) {
    return stepsAt(post) ? seatIn(post - 1) - seatIn(post) : 0;
  }

  /** All of them, from the first post at which the top steps. */
  public List<Double> stepsIn() {
    return IntStream.range(0, posts()).filter(this::stepsAt).mapToObj(this::stepIn).toList();
  }

  /**
   * Free height where it is least: a stepped top is a step higher above the lower post of a bay.
   */
  public double headroomIn() {
    return underStepsIn(geometry.headroomIn(), stepIn());
  }

  /** What steps leave of the headroom that a level top would have. */
  public static double underStepsIn(double levelIn, double stepIn) {
    return levelIn - Math.abs(stepIn);
  }

  public int posts() {
    return geometry.plan().bays() + 1;
  }

  public double alongIn(int post) {
    return geometry.plan().along().alongIn(post);
  }

  /** The post that stands nearest to a place along the walk. */
  public int nearestPost(double alongIn) {
    int nearest = 0;
    for (int post = 1; post < posts(); post++) {
      if (Math.abs(alongIn(post) - alongIn) < Math.abs(alongIn(nearest) - alongIn)) {
        nearest = post;
      }
    }
    return nearest;
  }

  public double groundIn(int post) {
    return -slopeRatio * alongIn(post);
  }

  /**
   * Underside of the post. Under a level top all holes go down to one level, that of the lowest
   * ground, so that all posts are alike.
   */
  public double footIn(int post) {
    boolean oneLevel = !follows() && !stepped() && intoGroundIn > 0;
    return (oneLevel ? lowestGroundIn() : groundIn(post)) - intoGroundIn;
  }

  /** Top of the post at its middle. */
  public double topIn(int post) {
    if (stepped()) {
      // The first post carries only the bay below it; every other carries the one above it too.
      return post == 0 ? seatIn(0) : seatIn(post - 1);
    }
    return geometry.posts().heightIn() + (follows() ? groundIn(post) : highestGroundIn());
  }

  /** Length of the post, to the long edge of a sloping top. */
  public double postLengthIn(int post) {
    return topIn(post)
        - footIn(post)
        + geometry.posts().breadthIn() / 2 * Math.abs(headerFallRatio());
  }

  /** Where the tops are stepped: the level at which the header of a bay meets its posts. */
  public double seatIn(int bay) {
    return geometry.posts().heightIn() + groundIn(bay + 1);
  }

  /** Depth of the foot below the post's own ground; negative where it stands above it. */
  public double belowGroundIn(int post) {
    return groundIn(post) - footIn(post);
  }

  /** Fall of the headers over their length in plan. */
  public double headerFallRatio() {
    return follows() ? slopeRatio : 0;
  }

  /** Length along the header over length in plan. */
  public double stretchRatio() {
    return Math.hypot(1, headerFallRatio());
  }

  public double degrees() {
    return Math.toDegrees(Math.atan(headerFallRatio()));
  }

  private double lowestGroundIn() {
    return Math.min(groundIn(0), groundIn(posts() - 1));
  }

  private double highestGroundIn() {
    return Math.max(groundIn(0), groundIn(posts() - 1));
  }
}
