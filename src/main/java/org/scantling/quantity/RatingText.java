package org.scantling.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The pounds and pound-feet inside a text about what a part is rated for, in metric units. */
public final class RatingText {
  private static final Pattern FORCE = Pattern.compile("(\\d+) lb\\b");
  private static final Pattern MOMENT = Pattern.compile("(\\d+) lb-ft\\b");

  private RatingText() {}

  /** The text with kilonewtons for pounds: {@code 1200 lb of lift} is 5.4 kN of lift. */
  public static String metric(String text) {
    String moments = MOMENT.matcher(text).replaceAll(RatingText::moment);
    return FORCE.matcher(moments).replaceAll(RatingText::force);
  }

  private static String force(MatchResult found) {
    return rating(Unit.POUND, Double.parseDouble(found.group(1))) + " kN";
  }

  private static String moment(MatchResult found) {
    double inchPounds = Double.parseDouble(found.group(1)) * Inches.PER_FOOT;
    return rating(Unit.INCH_POUND, inchPounds) + " kN·m";
  }

  /** What a part must be rated for at least is never rounded down. */
  private static String rating(Unit unit, double amount) {
    return BigDecimal.valueOf(unit.toMetric(amount))
        .setScale(1, RoundingMode.CEILING)
        .stripTrailingZeros()
        .toPlainString();
  }
}
