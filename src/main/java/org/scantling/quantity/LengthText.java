package org.scantling.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The grammar of written lengths: feet, inches and trade fractions, or metric. */
final class LengthText {
  private static final List<Integer> TAPE_FRACTIONS = List.of(2, 4, 8, 16, 32, 64);

  private static final String NUMBER =
      "(?:(\\d{1,9}(?:\\.\\d{1,20})?)(?:(?:\\s+|-)(\\d{1,3})/(\\d{1,3}))?|(\\d{1,3})/(\\d{1,3}))";
  private static final String FOOT_UNIT = "(?:'|ft|foot|feet)";
  private static final String INCH_UNIT = "(?:\"|in|inch|inches)";
  private static final Pattern FEET_INCHES =
      Pattern.compile(
          "(-?)(\\d{1,9})\\s*" + FOOT_UNIT + "\\s*-?\\s*" + NUMBER + "\\s*" + INCH_UNIT);
  private static final Pattern INCHES = Pattern.compile("(-?)" + NUMBER + "\\s*" + INCH_UNIT);
  private static final Pattern FEET = Pattern.compile("(-?)" + NUMBER + "\\s*" + FOOT_UNIT);
  private static final double YARD_MM = 914.4;
  private static final Pattern METRIC =
      Pattern.compile(
          "(-?)(\\d{1,9}(?:\\.\\d{1,20})?)\\s*"
              + "(yd|yards?|mm|millimet(?:er|re)s?|cm|centimet(?:er|re)s?|m|met(?:er|re)s?)");
  private static final Map<String, Double> MM =
      Map.of(
          "yd", YARD_MM, "ya", YARD_MM, "mm", 1.0, "mi", 1.0, "cm", 10.0, "ce", 10.0, "m", 1000.0,
          "me", 1000.0);

  /** As drawings have it: {@code 5-8 1/2} are feet and inches. */
  private static final Pattern DRAWN = Pattern.compile("(\\d{1,3})-(\\d{1,2} \\d{1,2}/\\d{1,2})");

  private static final Map<String, String> FRACTIONS =
      Map.of(
          "\u00bd", "1/2", "\u00bc", "1/4", "\u00be", "3/4", "\u215b", "1/8", "\u215c", "3/8",
          "\u215d", "5/8", "\u215e", "7/8");

  private LengthText() {}

  /** Inches of a written length, or nothing when the text is no length at all. */
  static Optional<Double> inches(String text) {
    String plain = DRAWN.matcher(plain(text)).replaceFirst("$1'-$2\"");
    Matcher match = FEET_INCHES.matcher(plain);
    if (match.matches()) {
      double inches = number(match, 3, text);
      if (inches >= Inches.PER_FOOT) {
        String meant = WrittenSlips.readings(plain).stream().findFirst().orElse("");
        throw QuantityKind.LENGTH.refused(text, QuantityKind.say("why.inches"), meant);
      }
      return signed(match, Integer.parseInt(match.group(2)) * Inches.PER_FOOT + inches);
    }
    match = INCHES.matcher(plain);
    if (match.matches()) {
      return signed(match, number(match, 2, text));
    }
    match = FEET.matcher(plain);
    if (match.matches()) {
      return signed(match, number(match, 2, text) * Inches.PER_FOOT);
    }
    match = METRIC.matcher(plain);
    if (match.matches()) {
      double millimetres =
          Double.parseDouble(match.group(2)) * Objects.requireNonNull(MM.get(unit(match.group(3))));
      return signed(match, millimetres / Inches.IN_MILLIMETRES);
    }
    return Optional.empty();
  }

  private static double number(Matcher match, int first, String text) {
    String whole = match.group(first);
    if (whole == null) {
      return fraction(match.group(first + 3), match.group(first + 4), text);
    }
    double value = Double.parseDouble(whole);
    if (match.group(first + 1) == null) {
      return value;
    }
    if (whole.contains(".")) {
      throw refused(text, QuantityKind.say("why.decimals"));
    }
    return value + fraction(match.group(first + 1), match.group(first + 2), text);
  }

  private static double fraction(String above, String below, String text) {
    int numerator = Integer.parseInt(above);
    int denominator = Integer.parseInt(below);
    if (!TAPE_FRACTIONS.contains(denominator)) {
      throw refused(text, QuantityKind.say("why.tape", "fraction", above + "/" + below));
    }
    if (numerator < 1 || numerator >= denominator) {
      throw refused(text, QuantityKind.say("why.improper", "fraction", above + "/" + below));
    }
    return (double) numerator / denominator;
  }

  private static Optional<Double> signed(Matcher match, double inches) {
    return Optional.of(match.group(1).isEmpty() ? inches : -inches);
  }

  private static QuantityException refused(String text, String why) {
    return QuantityKind.LENGTH.refused(text, why, "");
  }

  private static String unit(String written) {
    return written.substring(0, Math.min(2, written.length()));
  }

  /**
   * The text in small letters and plain signs: word processors turn foot and inch marks, fractions
   * and dashes into typographic ones, which mean the same.
   */
  static String plain(String text) {
    String plain =
        text.replaceAll("[\u2032\u2018\u2019\u00b4`\u02b9]", "'")
            .replaceAll("[\u2033\u201c\u201d\u02ba]|''", "\"")
            .replaceAll("[\u2010-\u2015\u2212]", "-")
            .replaceAll("[\u00a0\u2007\u2009\u202f]", " ")
            .replace('\u2044', '/');
    for (Map.Entry<String, String> each : FRACTIONS.entrySet()) {
      plain = plain.replaceAll("(?<=\\d) ?-?" + each.getKey(), " " + each.getValue());
      plain = plain.replace(each.getKey(), each.getValue());
    }
    return plain
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\b(in|ft)\\.", "$1")
        .replaceAll("\\s+and\\s+", " ");
  }
}
