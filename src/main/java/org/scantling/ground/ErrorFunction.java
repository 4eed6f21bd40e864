package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * The error function and its complement, to about the last three bits of a double.
 *
 * <p>Below 2 the series of positive terms, from 2 on the continued fraction of the complement.
 *
 * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, 7.1.6 and 7.1.14
 */
final class ErrorFunction {
  private static final double SERIES_BELOW = 2;
  private static final double ROOT_PI = Math.sqrt(Math.PI);
  private static final int FRACTION_LEVELS = 200;

  private ErrorFunction() {}

  /** erf(x) for x of zero or more. */
  static double erf(double x) {
    Require.zeroOrMore("argument of erf", x, "");
    return x < SERIES_BELOW ? series(x) : 1 - fraction(x);
  }

  /** erfc(x) = 1 − erf(x) for x of zero or more, without loss of digits where it is small. */
  static double erfc(double x) {
    Require.zeroOrMore("argument of erfc", x, "");
    return x < SERIES_BELOW ? 1 - series(x) : fraction(x);
  }

  private static double series(double x) {
    double term = x;
    double sum = x;
    for (int n = 1; term > sum * Math.ulp(1.0); n++) {
      term *= 2 * x * x / (2 * n + 1);
      sum += term;
    }
    return 2 / ROOT_PI * Math.exp(-x * x) * sum;
  }

  private static double fraction(double x) {
    double tail = x;
    for (int level = FRACTION_LEVELS; level >= 1; level--) {
      tail = x + 0.5 * level / tail;
    }
    return Math.exp(-x * x) / (ROOT_PI * tail);
  }
}
