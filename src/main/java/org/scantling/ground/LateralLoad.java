package org.scantling.ground;

/**
 * A sideways push on a post.
 *
 * @param forceLb P, allowable-stress level, lb, zero or more
 * @param heightIn h, from the ground to the push, in, zero or more
 */
public record LateralLoad(double forceLb, double heightIn) {
  public LateralLoad {
    Argument.zeroOrMore("lateral force (lb)", forceLb);
    Argument.zeroOrMore("height of the lateral force (in)", heightIn);
  }

  /** Moment at the ground, lb-in. */
  public double momentInLb() {
    return forceLb * heightIn;
  }
}
