package org.scantling.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.scantling.quantity.Unit;

/** The inches, pounds and pound-feet of a text that a table holds as it stands, in metric units. */
final class MetricText {
  private static final Pattern LENGTH =
      Pattern.compile("(?:(\\d+/\\d+) x )?((?:\\d+ )?\\d+(?:/\\d+)?) in\\b");
  private static final Pattern FORCE = Pattern.compile("(\\d+) lb\\b");
  private static final Pattern MOMENT = Pattern.compile("(\\d+) lb-ft\\b");
  private static final double INCHES_OF_A_FOOT = 12;

  private MetricText() {}

  static String of(String text) {
    String lengths = replaced(text, LENGTH, MetricText::length);
    String moments = replaced(lengths, MOMENT, MetricText::moment);
    return replaced(moments, FORCE, MetricText::force);
  }

  private static String replaced(
      String text, Pattern pattern, Function<MatchResult, String> metric) {
    return pattern.matcher(text).replaceAll(metric);
  }

  /** {@code 3/8 x 8 in} is a screw by its thickness and length. */
  private static String length(MatchResult found) {
    String thickness = found.group(1) == null ? "" : millimetres(found.group(1)) + " x ";
    return thickness + millimetres(found.group(2)) + " mm";
  }

  private static String force(MatchResult found) {
    return rating(Unit.POUND, Double.parseDouble(found.group(1))) + " kN";
  }

  private static String moment(MatchResult found) {
    double inchPounds = Double.parseDouble(found.group(1)) * INCHES_OF_A_FOOT;
    return rating(Unit.INCH_POUND, inchPounds) + " kN·m";
  }

  /** What a part must be rated for at least is never rounded down. */
  private static String rating(Unit unit, double amount) {
    return rounded(unit.toMetric(amount), 1, RoundingMode.CEILING);
  }

  /** Under an inch to the tenth: a bolt of 12.7 mm is not one of 13. */
  private static String millimetres(String inches) {
    double amount = inches(inches);
    return rounded(Unit.INCH.toMetric(amount), amount < 1 ? 1 : 0, RoundingMode.HALF_UP);
  }

  private static double inches(String written) {
    double sum = 0;
    for (String part : written.split(" ")) {
      int slash = part.indexOf('/');
      sum +=
          slash < 0
              ? Double.parseDouble(part)
              : Double.parseDouble(part.substring(0, slash))
                  / Double.parseDouble(part.substring(slash + 1));
    }
    return sum;
  }

  private static String rounded(double amount, int places, RoundingMode mode) {
    return BigDecimal.valueOf(amount).setScale(places, mode).stripTrailingZeros().toPlainString();
  }
}
