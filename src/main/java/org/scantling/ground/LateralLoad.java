package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * A sideways push on a post.
 *
 * @param forceLb P, allowable-stress level, lb, zero or more
 * @param heightIn h, from the ground to the push, in, zero or more
 */
public record LateralLoad(double forceLb, double heightIn) {
  public LateralLoad {
    Require.zeroOrMore("lateral force", forceLb, "lb");
    Require.zeroOrMore("height of the lateral force", heightIn, "in");
  }

  /** Moment at the ground, lb-in. */
  public double momentInLb() {
    return forceLb * heightIn;
  }
}
