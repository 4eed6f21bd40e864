package org.scantling.confirm;

import java.util.Comparator;
import java.util.List;
import org.scantling.ground.BuriedFooting;
import org.scantling.ground.Uplift;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Check;
import org.scantling.quantity.Inches;

/** What keeps a post or a pier down when wind or a person on a tail lifts it. */
final class FootLift {
  private final FootingWork.Foot foot;
  private final List<HeaderChecks.PostLoad> lifts;
  private final double postWeightLb;

  /**
   * @param lifts by combination, what the weight above the foot holds taken off but for the post
   * @param postWeightLb weight of the post where it still counts, else 0
   */
  FootLift(FootingWork.Foot foot, List<HeaderChecks.PostLoad> lifts, double postWeightLb) {
    this.foot = foot;
    this.lifts = lifts;
    this.postWeightLb = postWeightLb;
  }

  /** Depth at which weight alone keeps the post down; 0 where the timber does. */
  double depthIn(double holeDiameterIn, double deepestIn) {
    for (double depthIn = 0; depthIn <= deepestIn; depthIn++) {
      double triedIn = Math.max(depthIn, 1);
      if (check(most(triedIn, holeDiameterIn), triedIn, holeDiameterIn).passes()) {
        return depthIn;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Wind from below, or a person on a tail that tips the header off the next post. */
  HeaderChecks.PostLoad most(double depthIn, double holeDiameterIn) {
    return lifts.stream()
        .max(
            Comparator.<HeaderChecks.PostLoad>comparingDouble(
                    lift -> check(lift, depthIn, holeDiameterIn).ratio())
                .thenComparing(HeaderChecks.PostLoad::combination))
        .orElseThrow();
  }

  /**
   * What the weight above has not held down already, against post, footing and grip. Weight counts
   * as the combination has it: 0.6 against the wind, in full against a person.
   */
  Check check(HeaderChecks.PostLoad lift, double depthIn, double holeDiameterIn) {
    double postIn2 = foot.postBreadthIn() * foot.postBreadthIn();
    BuriedFooting buried =
        foot.concrete()
            ? BuriedFooting.fullCollar(depthIn, holeDiameterIn, postIn2)
            : BuriedFooting.none(depthIn, postIn2);
    Uplift held = Uplift.of(0, postWeightLb, buried, foot.weights());
    double weightLb = held.timberLb() + held.concreteLb() + held.soilLb();
    double gripLb = foot.concrete() ? 0 : gripLb(depthIn);
    return new Check(lift.upLb(), lift.combination().factor(LoadKind.DEAD) * weightLb + gripLb);
  }

  /**
   * Grip on the four faces of a straight post: it grows with the weight of soil above each inch of
   * depth.
   */
  private double gripLb(double depthIn) {
    double meanPcfIn = foot.gripRatio() * foot.weights().soilPcf() * depthIn / 2;
    double facesIn2 = 4 * foot.postBreadthIn() * depthIn;
    return meanPcfIn * facesIn2 / Inches.CUBIC_PER_CUBIC_FOOT;
  }
}
