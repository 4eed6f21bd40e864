package org.scantling.quantity;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * Written lengths, in both directions: feet, inches and trade fractions, or metric.
 *
 * <p>Printing rounds once, to the nearest 1/16 in or the nearest millimetre; the half goes away
 * from zero.
 */
public final class Length {
  private static final double HANDY_FROM_IN = 1;
  private static final double COARSE_FROM_IN = 10;
  private static final double HANDY_IN = 25 / Inches.IN_MILLIMETRES;

  private static final int PARTS = 16;
  private static final double LONGEST_IN = 1e9;

  private Length() {}

  /**
   * Inches of a written length, such as {@code 5'-8 1/2"}, {@code 42 in} or {@code 1.8 m}.
   *
   * @param text the length with its unit
   * @return inches; {@code 5'-8 1/2"} is 68.5
   * @throws QuantityException when the text is no length, saying what is accepted
   */
  public static double parse(String text) {
    return QuantityKind.LENGTH.parse(text);
  }

  /**
   * Trade text to the nearest 1/16 in.
   *
   * @param inches the length, finite
   * @return {@code 5'-8 1/2"} for 68.5; under a foot plain inches, {@code 8 1/2"}
   */
  public static String feetAndInches(double inches) {
    return feetAndInches(inches, PARTS);
  }

  /** The same to a finer fraction: 32 or 64 parts of an inch. */
  static String feetAndInches(double inches, int partsInAnInch) {
    long parts = awayFromZero(checked(inches) * partsInAnInch);
    long size = Math.abs(parts);
    long foot = (long) (Inches.PER_FOOT * partsInAnInch);
    String sign = parts < 0 ? "-" : "";
    if (size < foot) {
      return sign + mixed(size, partsInAnInch) + "\"";
    }
    long rest = size % foot;
    String restText = mixed(rest, partsInAnInch);
    boolean bare = rest > 0 && rest < partsInAnInch;
    return sign + size / foot + "'-" + (bare ? "0 " : "") + restText + "\"";
  }

  /**
   * Trade text that stays in inches, to the nearest 1/16 in.
   *
   * @param inches the length, finite
   * @return {@code 68 1/2 in} for 68.5
   */
  public static String inches(double inches) {
    long parts = awayFromZero(checked(inches) * PARTS);
    return (parts < 0 ? "-" : "") + mixed(Math.abs(parts), PARTS) + " in";
  }

  /**
   * A length that somebody chose for being handy, such as a foot of spare, as a metric tape has it:
   * the nearest 25 mm, or 50 mm from ten inches on; as it is under an inch, where no round number
   * is near.
   *
   * @param inches the length, finite
   * @return inches; six gives 150 mm, a foot 300 mm
   */
  public static double handyMetric(double inches) {
    if (inches < HANDY_FROM_IN) {
      return inches;
    }
    double roundIn = inches < COARSE_FROM_IN ? HANDY_IN : 2 * HANDY_IN;
    return Math.round(inches / roundIn) * roundIn;
  }

  /**
   * Metric text to the nearest millimetre.
   *
   * @param inches the length, finite
   * @return {@code 1.740 m} for 68.5; under a metre millimetres, {@code 450 mm}
   */
  public static String metric(double inches) {
    long millimetres = awayFromZero(checked(inches) * Inches.IN_MILLIMETRES);
    if (Math.abs(millimetres) < 1000) {
      return millimetres + " mm";
    }
    return String.format(Locale.ROOT, "%s m", BigDecimal.valueOf(millimetres, 3).toPlainString());
  }

  /**
   * Metric text that stays in millimetres, as a cutting list has it.
   *
   * @param inches the length, finite
   * @return {@code 1740 mm} for 68.5
   */
  public static String millimetres(double inches) {
    return awayFromZero(checked(inches) * Inches.IN_MILLIMETRES) + " mm";
  }

  /** Millimetres with that many decimals, for what the nearest one does not tell apart. */
  static String metric(double inches, int decimals) {
    return decimals == 0
        ? metric(inches)
        : String.format(
            Locale.ROOT, "%." + decimals + "f mm", checked(inches) * Inches.IN_MILLIMETRES);
  }

  private static String mixed(long parts, int partsInAnInch) {
    long whole = parts / partsInAnInch;
    long rest = parts % partsInAnInch;
    if (rest == 0) {
      return Long.toString(whole);
    }
    long common = Long.lowestOneBit(rest);
    String fraction = rest / common + "/" + partsInAnInch / common;
    return whole == 0 ? fraction : whole + " " + fraction;
  }

  private static long awayFromZero(double amount) {
    long size = Math.round(Math.abs(amount));
    return amount < 0 ? -size : size;
  }

  private static double checked(double inches) {
    if (!(Math.abs(inches) <= LONGEST_IN)) {
      throw new IllegalArgumentException("length " + inches + " in must be finite and below 1e9");
    }
    return inches;
  }
}
