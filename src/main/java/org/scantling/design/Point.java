package org.scantling.design;

/**
 * A place on the site, seen from the datum: the centre of the first post of the near row at
 * finished ground.
 *
 * @param alongIn along the walk, level
 * @param acrossIn across it, to the far row
 * @param upIn above the ground at the datum
 */
public record Point(double alongIn, double acrossIn, double upIn) {
  public Point plus(double moreAlongIn, double moreUpIn) {
    return new Point(alongIn + moreAlongIn, acrossIn, upIn + moreUpIn);
  }

  public double toIn(Point other) {
    return Math.hypot(
        Math.hypot(other.alongIn - alongIn, other.acrossIn - acrossIn), other.upIn - upIn);
  }
}
