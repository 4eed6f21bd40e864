package org.scantling.quantity;

/**
 * How hard something is worked: what is asked of it against what it can give, both in the same
 * unit.
 *
 * <p>One boundary rule for the whole program: a ratio of 1 passes, with a relative slack of 1e-9
 * for the last bits of the arithmetic.
 *
 * @param demand what is asked, finite and not negative
 * @param capacity what can be given, finite and above zero
 */
public record Check(double demand, double capacity) {
  private static final double SLACK = 1e-9;

  /** The ratio that stands for what leans or bows out under its load, however strong it is. */
  public static final double LEANS_OVER = 1000;

  /** A demand of that many times the capacity is told as such: its own number means nothing. */
  private static final double BEYOND_TELLING = 10;

  public Check {
    if (!(demand >= 0) || Double.isInfinite(demand)) {
      throw new IllegalArgumentException("demand " + demand + " must be zero or more and finite");
    }
    if (!(capacity > 0) || Double.isInfinite(capacity)) {
      throw new IllegalArgumentException("capacity " + capacity + " must be above zero and finite");
    }
  }

  /** Demand over capacity; 1 means worked exactly to the limit. */
  public double ratio() {
    return demand / capacity;
  }

  /** True where a ratio is so far past its limit that the numbers behind it mean nothing. */
  public static boolean beyondTelling(double ratio) {
    return ratio >= BEYOND_TELLING;
  }

  /** True while the demand stays within the capacity. */
  public boolean passes() {
    return passes(1);
  }

  /** True while the ratio stays within {@code limitRatio}, for limits stricter or laxer than 1. */
  public boolean passes(double limitRatio) {
    return ratio() <= limitRatio * (1 + SLACK);
  }
}
