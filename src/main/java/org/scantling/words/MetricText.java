package org.scantling.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.scantling.quantity.InchText;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Unit;

/** The inches, pounds and pound-feet of a text that a table holds as it stands, in metric units. */
final class MetricText {
  private static final Pattern FORCE = Pattern.compile("(\\d+) lb\\b");
  private static final Pattern MOMENT = Pattern.compile("(\\d+) lb-ft\\b");

  private MetricText() {}

  static String of(String text) {
    String lengths = InchText.replaced(text, size -> size.millimetres() + " mm");
    String moments = MOMENT.matcher(lengths).replaceAll(MetricText::moment);
    return FORCE.matcher(moments).replaceAll(MetricText::force);
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
