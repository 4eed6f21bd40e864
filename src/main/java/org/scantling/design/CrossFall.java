package org.scantling.design;

import java.util.OptionalDouble;

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

  /** Its share, whichever row stands lower, 0 on level ground; empty where it is told otherwise. */
  public OptionalDouble steepnessPercent() {
    return toldIn == 0 ? OptionalDouble.of(Math.abs(sharePercent)) : OptionalDouble.empty();
  }

  /** What lies from row to row, whichever stands lower; empty where it is not told so. */
  public OptionalDouble stepIn() {
    return toldIn == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.abs(toldIn));
  }

  /** Another share with the same row lower; of level ground, the second. */
  public CrossFall steep(double otherPercent) {
    return ofPercent(secondHigher() ? -otherPercent : otherPercent);
  }

  /** So much from row to row with the same row lower; of level ground, the second. */
  public CrossFall stepped(double otherIn) {
    return of(secondHigher() ? -otherIn : otherIn);
  }

  private boolean secondHigher() {
    return sharePercent + toldIn < 0;
  }
}
