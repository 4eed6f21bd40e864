package org.scantling.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Length;
import org.scantling.tables.FastenerRow;

/**
 * Fasteners are of inch sizes and keep their names; where the yard thinks in millimetres, what they
 * measure stands beside.
 */
final class InchSizes {
  private static final Pattern SIZE =
      Pattern.compile("(?:(\\d+/\\d+) x )?((?:\\d+ )?\\d+(?:/\\d+)?) in\\b");

  private final boolean metric;

  InchSizes(Built built) {
    this.metric = built.tape() == Tape.MILLIMETRES;
  }

  String told(double inches) {
    return beside(Length.inches(inches));
  }

  /** A fastener by its name, with its thickness and length. */
  String told(FastenerRow row) {
    String size = millimetres(row.diameterIn()) + " x " + millimetres(row.lengthIn());
    return metric ? row.name() + " (" + size + " mm)" : row.name();
  }

  /** A text of a table, with millimetres after each of its inch sizes. */
  String beside(String text) {
    return metric
        ? SIZE.matcher(text)
            .replaceAll(
                found ->
                    found.group()
                        + " ("
                        + (found.group(1) == null
                            ? ""
                            : millimetres(inches(found.group(1))) + " x ")
                        + millimetres(inches(found.group(2)))
                        + " mm)")
        : text;
  }

  private static double inches(String written) {
    return Length.parse(written + " in");
  }

  /** Under an inch to the tenth: a bolt of 12.7 mm is not one of 13. */
  static String millimetres(double inches) {
    return BigDecimal.valueOf(inches * Inches.IN_MILLIMETRES)
        .setScale(inches < 1 ? 1 : 0, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
