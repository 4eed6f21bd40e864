package org.scantling.intake;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.scantling.quantity.QuantityKind;

/**
 * An amount as a file has it, in the unit in which somebody gave it: what is 1200 mm is no long
 * decimal of an inch.
 */
final class WrittenAmount {
  private static final int SHORT = 4;

  /** The unit used inside, and the one that metric files use. */
  private record Units(String inside, String metric) {}

  private static final Map<QuantityKind, Units> UNITS =
      Map.of(
          QuantityKind.LENGTH, new Units("in", "mm"),
          QuantityKind.LOAD, new Units("psf", "kPa"),
          QuantityKind.WIND_SPEED, new Units("mph", "m/s"),
          QuantityKind.DEGREE_DAYS, new Units("F-days", "C-days"),
          QuantityKind.TEMPERATURE, new Units("F", "C"));

  private WrittenAmount() {}

  /**
   * The amount with a unit, such that it is read back without any loss.
   *
   * @throws IllegalArgumentException for a kind that files have no unit for
   */
  static String of(double amount, QuantityKind kind) {
    Units units = UNITS.get(kind);
    if (units == null) {
      throw new IllegalArgumentException("no file gives a " + kind + " with its unit");
    }
    String inside = plain(amount) + " " + units.inside();
    if (BigDecimal.valueOf(amount).stripTrailingZeros().scale() <= SHORT) {
      return inside;
    }
    double zero = kind.parse("0 " + units.metric());
    double one = kind.parse("1 " + units.metric()) - zero;
    BigDecimal metric =
        BigDecimal.valueOf((amount - zero) / one).setScale(SHORT, RoundingMode.HALF_UP);
    String written = plain(metric.doubleValue()) + " " + units.metric();
    return Double.compare(kind.parse(written), amount) == 0 ? written : inside;
  }

  /** Decimals without exponent and without loss. */
  static String plain(double amount) {
    BigDecimal exact = BigDecimal.valueOf(amount);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
