package org.scantling.design;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How the ground falls and how the top runs over it, post by post: level, in one plane with the
 * ground, or in level steps. A fall counts positive from the first post to the last, and from the
 * first row to the second; heights count from the ground at the first post of the first row. The
 * tops of both rows lie at one level, so that the posts of the lower row are the taller ones, and
 * it is their height that the geometry tells.
 *
 * @param kind level, follows-ground or stepped
 * @param slopeRatio fall of the ground over its length in plan
 * @param acrossIn fall of the ground from the first row to the second
 * @param intoGroundIn depth of the foot below the ground, negative where it stands above it
 * @param levelHoles true where the holes under a level top all go down to one level; false over
 *     rock, which lies as deep below the ground everywhere
 */
public record TopLine(
    Geometry geometry,
    String kind,
    double slopeRatio,
    double acrossIn,
    double intoGroundIn,
    boolean levelHoles) {

  /** Over ground that is level across the walk. */
  public TopLine(Geometry geometry, String kind, double slopeRatio, double intoGroundIn) {
    this(geometry, kind, slopeRatio, 0, intoGroundIn);
  }

  /** Whose holes go down to one level where its top is level. */
  public TopLine(
      Geometry geometry, String kind, double slopeRatio, double acrossIn, double intoGroundIn) {
    this(geometry, kind, slopeRatio, acrossIn, intoGroundIn, true);
  }

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

  /** How much lower one row stands than the other, whichever that is. */
  public double dropIn() {
    return Math.abs(acrossIn);
  }

  /** The row whose posts are the taller: the second one where both stand alike. */
  public int lowRow() {
    return acrossIn < 0 ? 0 : 1;
  }

  /**
   * Free height where it is least: a stepped top is a step higher above the lower post of a bay,
   * and over ground that falls across the walk it is lowest along the row on the higher ground.
   */
  public double headroomIn() {
    return underStepsIn(geometry.headroomIn(), stepIn()) - dropIn();
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

  /**
   * The ground at a post.
   *
   * @param row 0 for the first, 1 for the second
   */
  public double groundIn(int row, int post) {
    return -slopeRatio * alongIn(post) + rowIn(row);
  }

  /** The ground along a row over that along the first one. */
  public double rowIn(int row) {
    return row == 0 ? 0 : -acrossIn;
  }

  /** The ground at the taller of two posts across from each other. */
  private double lowGroundIn(int post) {
    return groundIn(lowRow(), post);
  }

  /**
   * Underside of the post. Under a level top all holes of a row go down to one level, that of its
   * lowest ground, so that all posts of the row are alike.
   */
  public double footIn(int row, int post) {
    boolean oneLevel = levelHoles && !follows() && !stepped() && intoGroundIn > 0;
    double groundIn =
        oneLevel ? Math.min(groundIn(row, 0), groundIn(row, posts() - 1)) : groundIn(row, post);
    return groundIn - intoGroundIn;
  }

  /** Top of the post at its middle, alike in both rows. */
  public double topIn(int post) {
    if (stepped()) {
      // The first post carries only the bay below it; every other carries the one above it too.
      return post == 0 ? seatIn(0) : seatIn(post - 1);
    }
    return geometry.posts().heightIn() + (follows() ? lowGroundIn(post) : highestGroundIn());
  }

  /** Length of the post, to the long edge of a sloping top. */
  public double postLengthIn(int row, int post) {
    return topIn(post)
        - footIn(row, post)
        + geometry.posts().breadthIn() / 2 * Math.abs(headerFallRatio());
  }

  /** Where the tops are stepped: the level at which the header of a bay meets its posts. */
  public double seatIn(int bay) {
    return geometry.posts().heightIn() + lowGroundIn(bay + 1);
  }

  /** Depth of the foot below the post's own ground; negative where it stands above it. */
  public double belowGroundIn(int row, int post) {
    return groundIn(row, post) - footIn(row, post);
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

  /** The upper end of the lower row. */
  private double highestGroundIn() {
    return Math.max(lowGroundIn(0), lowGroundIn(posts() - 1));
  }
}
