package org.scantling.confirm;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.ground.BuriedFooting;
import org.scantling.ground.PostGrip;
import org.scantling.ground.Uplift;

/** What keeps a post or a pier down when wind or a person on a tail lifts it. */
final class FootLift {
  private final FootingWork.Foot foot;
  private final List<HeaderChecks.PostLoad> lifts;
  private final PostWeight post;

  /**
   * @param lifts by combination, what the weight above the foot holds taken off but for the post
   * @param post weight of the post where it still counts
   */
  FootLift(FootingWork.Foot foot, List<HeaderChecks.PostLoad> lifts, PostWeight post) {
    this.foot = foot;
    this.lifts = lifts;
    this.post = post;
  }

  /** Depth at which weight alone keeps the post down; 0 where the timber does. */
  double depthIn(double holeDiameterIn, double deepestIn) {
    for (double depthIn = 0; depthIn <= deepestIn; depthIn++) {
      double triedIn = Math.max(depthIn, 1);
      if (most(triedIn, holeDiameterIn).check().passes()) {
        return depthIn;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Wind from below, or a person on a tail that tips the header off the next post. */
  HeldDown most(double depthIn, double holeDiameterIn) {
    return lifts.stream()
        .map(lift -> held(lift, depthIn, holeDiameterIn))
        .max(
            Comparator.<HeldDown>comparingDouble(held -> held.check().ratio())
                .thenComparing(HeldDown::combination))
        .orElseThrow();
  }

  /** What the weight above has not held down already, against post, footing and grip. */
  private HeldDown held(HeaderChecks.PostLoad lift, double depthIn, double holeDiameterIn) {
    double breadthIn = foot.postBreadthIn();
    BuriedFooting buried =
        foot.concrete()
            ? BuriedFooting.fullCollar(depthIn, holeDiameterIn, breadthIn)
            : BuriedFooting.none(depthIn, breadthIn);
    return new HeldDown(
        lift.combination(),
        lift.upLb(),
        post,
        Uplift.of(0, post.weightLb(), buried, foot.weights()),
        foot.concrete()
            ? Optional.empty()
            : Optional.of(
                PostGrip.of(foot.gripRatio(), foot.weights().soilPcf(), depthIn, breadthIn)));
  }
}
