package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * How a post is bent in one direction, for the combined check.
 *
 * @param bending stress and limit in that direction
 * @param depthIn side of the post along that direction, above 0
 * @param eccentricityIn how far off centre the axial load sits in that direction, 0 or more; at
 *     least a sixth of the side is good practice
 */
public record BentAxis(Bending bending, double depthIn, double eccentricityIn) {
  public BentAxis {
    Require.positive("depth", depthIn, "in");
    Require.zeroOrMore("eccentricity", eccentricityIn, "in");
  }

  /** 6e/d: what the axial stress is multiplied by to give the bending stress of its own offset. */
  double eccentricRatio() {
    return 6 * eccentricityIn / depthIn;
  }
}
