package org.scantling.confirm;

import java.util.List;

/**
 * The post of a braced walk that is worked hardest, with what the frame came to there: what can be
 * gone over by statics from the forces at the feet. Forces count positive against the wind.
 *
 * @param post load, moments and the sum
 * @param place where it stands
 * @param wind what pushes, and what the sway adds
 * @param feet of all posts of the plane
 * @param kneeInLb bending where the brace meets the post
 * @param mostAtIn height at which it is bent most
 * @param braces that meet it
 * @param pressedAtFoot true where the post is pressed most at its foot
 */
public record BracedScene(
    PostScene post,
    Place place,
    Wind wind,
    List<Foot> feet,
    double kneeInLb,
    double mostAtIn,
    Braces braces,
    boolean pressedAtFoot) {
  public BracedScene {
    feet = List.copyOf(feet);
  }

  /**
   * Where a post stands in its plane.
   *
   * @param index from 0
   * @param postCount posts in the plane
   * @param heightIn from bracket to the centre of the beam
   * @param legIn of a brace along the post
   */
  public record Place(int index, int postCount, double heightIn, double legIn) {}

  /**
   * What pushes, and what the sway adds.
   *
   * @param factor what the combination counts of the wind
   * @param verticalLb what stands on all feet of the plane
   * @param criticalLb what would make the plane lean over by itself
   * @param topLb push at the top of each post, sway counted
   * @param spreadLbPerIn push on each inch of the post, sway counted
   */
  public record Wind(
      double factor, double verticalLb, double criticalLb, double topLb, double spreadLbPerIn) {}

  /** Sideways force of a foot, and what stands on it. */
  public record Foot(double sidewaysLb, double standsLb) {}

  /**
   * The braces that meet a post.
   *
   * @param oneLb force in the one that pushes the knee most, with the wind
   * @param otherLb the same of the other one, 0 where there is none
   * @param pulled true where the first is pulled
   * @param upLb what both pull up at the post
   */
  public record Braces(double oneLb, double otherLb, boolean pulled, double upLb) {}

  /** The foot of this post. */
  public Foot foot() {
    return feet.get(place.index());
  }

  /** Sideways force of all feet. */
  public double sidewaysLb() {
    return feet.stream().mapToDouble(Foot::sidewaysLb).sum();
  }

  /** What stands on all feet. */
  public double standsLb() {
    return feet.stream().mapToDouble(Foot::standsLb).sum();
  }
}
