package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.SupportForces;

/** What one combination presses on each support of a beam, lb; negative where it lifts. */
final class SupportCase {
  private final LoadCombination combination;
  private final SupportForces forces;

  SupportCase(LoadCombination combination, SupportForces forces) {
    this.combination = combination;
    this.forces = forces;
  }

  LoadCombination combination() {
    return combination;
  }

  /** True where the climbers are counted. */
  boolean vines() {
    return combination != LoadCombination.UPLIFT;
  }

  int supportCount() {
    return forces.supportCount();
  }

  double reactionLb(int support) {
    return forces.totalLb(support);
  }

  /** From the left, from the right and right over it. */
  SupportForces forces() {
    return forces;
  }

  double mostLb() {
    double mostLb = 0;
    for (int support = 0; support < supportCount(); support++) {
      mostLb = Math.max(mostLb, reactionLb(support));
    }
    return mostLb;
  }

  double leastLb() {
    double leastLb = Double.POSITIVE_INFINITY;
    for (int support = 0; support < supportCount(); support++) {
      leastLb = Math.min(leastLb, reactionLb(support));
    }
    return leastLb;
  }
}
