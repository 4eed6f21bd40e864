package org.scantling.visit;

import java.util.Locale;
import java.util.regex.Pattern;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Length;

/** Lengths as one reads them off a tape and may type them again. */
final class TapeText {
  private static final Pattern METRIC =
      Pattern.compile(".*\\d\\s*(?:mm|cm|m|(?:milli|centi)?met(?:er|re)s?)$");

  private TapeText() {}

  static boolean isMetric(String written) {
    return METRIC.matcher(written.strip().toLowerCase(Locale.ROOT)).matches();
  }

  /** To the nearest 1/16 in, from a foot on in feet and inches; or to the nearest millimeter. */
  static String of(double inches, boolean metric) {
    if (metric) {
      return Length.metric(inches);
    }
    if (inches < Inches.PER_FOOT) {
      return Length.inches(inches);
    }
    String marks = Length.feetAndInches(inches);
    return marks.replace("'-", " ft ").replace("\"", " in").replace(" ft 0 in", " ft");
  }
}
