package org.scantling.design;

/**
 * How the ground falls across the walk, told in one of two ways. What falls from the first row to
 * the second counts positive; where the second row stands higher, negative.
 *
 * @param sharePercent of the distance between the rows
 * @param toldIn from row to row, whatever lies between them
 */
public record CrossFall(double sharePercent, double toldIn) {
  public static final CrossFall LEVEL = new CrossFall(0, 0);

  /** So much of the distance between the rows. */
  public static CrossFall ofPercent(double sharePercent) {
    return new CrossFall(sharePercent, 0);
  }

  /** So much from row to row. */
  public static CrossFall of(double toldIn) {
    return new CrossFall(0, toldIn);
  }

  public boolean level() {
    return sharePercent == 0 && toldIn == 0;
  }

  /** How much lower the second row stands, in inches. */
  public double fallIn(double rowSpacingIn) {
    return sharePercent / 100 * rowSpacingIn + toldIn;
  }
}
