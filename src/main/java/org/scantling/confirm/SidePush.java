package org.scantling.confirm;

/**
 * What the wind does to one post in one direction, strength level.
 *
 * @param topLb on the header and the crossbeams, at the top of the post
 * @param spreadLb on the post, its sides and their leaves, spread evenly over the height
 * @param heightIn ground to top of the post
 */
public record SidePush(double topLb, double spreadLb, double heightIn) {

  public double forceLb() {
    return topLb + spreadLb;
  }

  /** Moment at a height above ground, in inch-pounds. */
  public double momentAtInLb(double aboveGroundIn) {
    double armIn = heightIn - aboveGroundIn;
    return topLb * armIn + spreadLb * armIn * armIn / (2 * heightIn);
  }

  /** Height of the resultant above ground. */
  public double resultantIn() {
    return forceLb() > 0 ? momentAtInLb(0) / forceLb() : heightIn / 2;
  }

  /** Sway of the top of a post held by the ground, for EI in lb-in². */
  double swayIn(double stiffnessLbIn2) {
    double cube = heightIn * heightIn * heightIn;
    return topLb * cube / (3 * stiffnessLbIn2) + spreadLb * cube / (8 * stiffnessLbIn2);
  }
}
