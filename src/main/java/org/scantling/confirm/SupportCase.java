package org.scantling.confirm;

import org.scantling.loads.LoadCombination;

/** What one combination presses on each support of a beam, lb; negative where it lifts. */
final class SupportCase {
  private final LoadCombination combination;
  private final double[] reactionsLb;

  SupportCase(LoadCombination combination, double[] reactionsLb) {
    this.combination = combination;
    this.reactionsLb = reactionsLb;
  }

  LoadCombination combination() {
    return combination;
  }

  /** True where the climbers are counted. */
  boolean vines() {
    return combination != LoadCombination.UPLIFT;
  }

  int supportCount() {
    return reactionsLb.length;
  }

  double reactionLb(int support) {
    return reactionsLb[support];
  }

  double mostLb() {
    double mostLb = 0;
    for (double reactionLb : reactionsLb) {
      mostLb = Math.max(mostLb, reactionLb);
    }
    return mostLb;
  }

  double leastLb() {
    double leastLb = Double.POSITIVE_INFINITY;
    for (double reactionLb : reactionsLb) {
      leastLb = Math.min(leastLb, reactionLb);
    }
    return leastLb;
  }
}
