package org.scantling.quantity;

/**
 * Refuses numbers that a quantity cannot have; each check returns its value.
 *
 * <p>Every refusal is an IllegalArgumentException that says what it is, what was found with its
 * unit, and what it must be. A unit is given as people write it, empty for plain numbers.
 */
public final class Require {
  private Require() {}

  /** Above zero and finite. */
  public static double positive(String what, double value, String unit) {
    if (value > 0 && Double.isFinite(value)) {
      return value;
    }
    throw refused(what, value, unit, "above zero and finite");
  }

  /** Zero or more, and finite. */
  public static double zeroOrMore(String what, double value, String unit) {
    if (value >= 0 && Double.isFinite(value)) {
      return value;
    }
    throw refused(what, value, unit, "zero or more and finite");
  }

  /** Any number that is one. */
  public static double finite(String what, double value, String unit) {
    if (Double.isFinite(value)) {
      return value;
    }
    throw refused(what, value, unit, "finite");
  }

  /** From the least to the most, both allowed. */
  public static double within(String what, double value, String unit, double least, double most) {
    if (value >= least && value <= most) {
      return value;
    }
    throw refused(what, value, unit, "from " + least + " to " + most);
  }

  /** A part of a whole, from 0 to 1. */
  public static double share(String what, double value) {
    if (value >= 0 && value <= 1) {
      return value;
    }
    throw refused(what, value, "", "between 0 and 1");
  }

  /** Below a limit, which itself is not allowed. */
  public static double below(String what, double value, String unit, double limit) {
    if (value < limit) {
      return value;
    }
    throw refused(what, value, unit, "below " + limit);
  }

  /** Not more than another quantity in the same unit, which the refusal names. */
  public static double atMost(
      String what, double value, String unit, String limitName, double limit) {
    if (value <= limit) {
      return value;
    }
    throw refused(what, value, unit, "at most the " + limitName + ", " + measured(limit, unit));
  }

  /** Put into words only where something is refused: to write a number out takes its time. */
  private static IllegalArgumentException refused(
      String what, double value, String unit, String must) {
    return new IllegalArgumentException(what + " " + measured(value, unit) + " must be " + must);
  }

  private static String measured(double value, String unit) {
    return unit.isEmpty() ? String.valueOf(value) : value + " " + unit;
  }
}
