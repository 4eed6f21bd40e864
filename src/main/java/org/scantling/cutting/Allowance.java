package org.scantling.cutting;

/**
 * What a stick loses before it is pieces.
 *
 * @param kerfTicks wood lost between two pieces, 0 or more
 * @param endTrimTicks wood lost to squaring each end of the stick, 0 or more
 * @param knotsTicks room kept on a stick to move a cut clear of a knot, 0 or more
 */
public record Allowance(int kerfTicks, int endTrimTicks, int knotsTicks) {
  private static final Allowance NONE = new Allowance(0, 0, 0);

  public Allowance {
    if (kerfTicks < 0 || endTrimTicks < 0 || knotsTicks < 0) {
      throw new IllegalArgumentException(
          "kerf, end trim and room for knots must be 0 or more, found "
              + String.join(
                  ", ",
                  Integer.toString(kerfTicks),
                  Integer.toString(endTrimTicks),
                  Integer.toString(knotsTicks)));
    }
  }

  /** Nothing is lost. */
  public static Allowance none() {
    return NONE;
  }

  /** Room for pieces and the kerfs between them, where a stick is cut into more than one piece. */
  int roomTicks(Stick stick) {
    return stick.lengthTicks() - 2 * endTrimTicks - knotsTicks;
  }
}
