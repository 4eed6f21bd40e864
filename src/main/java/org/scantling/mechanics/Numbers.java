package org.scantling.mechanics;

/** Argument checks shared by the records of this package; each returns its value. */
final class Numbers {
  private Numbers() {}

  static double finite(String what, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " must be a finite number");
    }
    return value;
  }

  static double positive(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " must be above zero and finite");
    }
    return value;
  }
}
