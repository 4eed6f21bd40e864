package org.scantling.timber;

/** The argument checks of this package: what it is, what was found, what it must be. */
final class Require {
  private Require() {}

  static double positive(String what, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refusal(what, value, unit, "must be above 0 and finite");
    }
    return value;
  }

  static double notNegative(String what, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw refusal(what, value, unit, "must be 0 or more and finite");
    }
    return value;
  }

  static double finite(String what, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw refusal(what, value, unit, "must be finite");
    }
    return value;
  }

  static double within(String what, double value, String unit, double[] range) {
    if (!(value >= range[0] && value <= range[1])) {
      throw refusal(what, value, unit, "must be from " + range[0] + " to " + range[1]);
    }
    return value;
  }

  static double below(String what, double value, String unit, double limit) {
    if (!(value < limit)) {
      throw refusal(what, value, unit, "must be below " + limit);
    }
    return value;
  }

  private static IllegalArgumentException refusal(
      String what, double value, String unit, String must) {
    String measure = unit.isEmpty() ? "" : " " + unit;
    return new IllegalArgumentException(what + " " + value + measure + " " + must);
  }
}
