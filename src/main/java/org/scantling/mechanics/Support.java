package org.scantling.mechanics;

/**
 * How a node of a frame is held: in each direction free (0), on a spring, or held fast (infinite).
 *
 * @param sidewaysLbPerIn stiffness along x, lb/in, zero to infinity
 * @param uprightLbPerIn stiffness along y, lb/in, zero to infinity
 * @param turningInLbPerRad stiffness against turning, in·lb per radian, zero to infinity
 */
public record Support(double sidewaysLbPerIn, double uprightLbPerIn, double turningInLbPerRad) {
  private static final double HELD = Double.POSITIVE_INFINITY;

  /** Not held at all. */
  public static final Support FREE = new Support(0, 0, 0);

  /** Held in both directions, free to turn. */
  public static final Support PINNED = new Support(HELD, HELD, 0);

  /** Held in both directions and against turning. */
  public static final Support FIXED = new Support(HELD, HELD, HELD);

  /** Held up only: free to slide along x and to turn. */
  public static final Support SLIDING_SIDEWAYS = new Support(0, HELD, 0);

  /** Held sideways only: free to slide along y and to turn. */
  public static final Support SLIDING_UPRIGHT = new Support(HELD, 0, 0);

  public Support {
    check("sideways", sidewaysLbPerIn);
    check("upright", uprightLbPerIn);
    check("turning", turningInLbPerRad);
  }

  private static void check(String direction, double stiffness) {
    if (!(stiffness >= 0)) {
      throw new IllegalArgumentException(
          direction + " support stiffness " + stiffness + " must be zero or more");
    }
  }

  /** A foot held in both directions that turns against a spring, as a post in soil does. */
  public static Support turningSpring(double turningInLbPerRad) {
    return new Support(HELD, HELD, turningInLbPerRad);
  }

  double stiffness(int direction) {
    return switch (direction) {
      case 0 -> sidewaysLbPerIn;
      case 1 -> uprightLbPerIn;
      default -> turningInLbPerRad;
    };
  }
}
