package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * How a slant-driven nail lies in the two pieces.
 *
 * <p>Driven at about 30 degrees to the piece it starts in, a third of its length up from that
 * piece's end.
 *
 * @param lengthIn length of the nail, above 0
 */
public record ToeNail(double lengthIn) {
  private static final double SLANT_DEGREES = 30;

  public ToeNail {
    Require.positive("nail length", lengthIn, "in");
  }

  /**
   * The bearing length in the piece it starts in, in inches.
   *
   * <p>Source: NDS, 2018, 12.1.6 and Figure 12A, from memory. Worked: a 3.5 in nail gives 1.17 in.
   */
  public double sideIn() {
    return lengthIn / 3;
  }

  /**
   * How deep it goes into the other piece, in inches.
   *
   * <p>Source: NDS, 2018, 12.1.6 and Figure 12A, from memory. Worked: a 3.5 in nail gives 1.86 in.
   */
  public double penetrationIn() {
    return lengthIn * Math.cos(Math.toRadians(SLANT_DEGREES)) - lengthIn / 3;
  }

  /**
   * How far from the face that it is driven through it crosses from one piece into the other, in
   * inches.
   *
   * <p>Source: NDS, 2018, Figure 12A, from memory. Worked: a 3.5 in nail gives 0.67 in.
   */
  public double crossingIn() {
    return sideIn() * Math.tan(Math.toRadians(SLANT_DEGREES));
  }
}
