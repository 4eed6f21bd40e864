package org.scantling.ground;

/** Refuses numbers that no ground or footing can have; each check returns its value. */
final class Argument {
  private Argument() {}

  static double positive(String what, double value) {
    return require(value > 0 && Double.isFinite(value), what, value, "above zero and finite");
  }

  static double zeroOrMore(String what, double value) {
    return require(value >= 0 && Double.isFinite(value), what, value, "zero or more and finite");
  }

  static double finite(String what, double value) {
    return require(Double.isFinite(value), what, value, "finite");
  }

  static double share(String what, double value) {
    return require(value >= 0 && value <= 1, what, value, "between 0 and 1");
  }

  static double atMost(String what, double value, String limitName, double limit) {
    return require(value <= limit, what, value, "not more than the " + limitName + " " + limit);
  }

  private static double require(boolean holds, String what, double value, String must) {
    if (!holds) {
      throw new IllegalArgumentException(what + " " + value + " must be " + must);
    }
    return value;
  }
}
