package org.scantling.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The inch sizes of fasteners inside a text, such as {@code 1/2 in} and {@code 3/8 x 8 in}. */
public final class InchText {
  /** A share such as {@code 1 in 200} is no size. */
  private static final Pattern SIZE =
      Pattern.compile("(?:(\\d+/\\d+) x )?((?:\\d+ )?\\d+(?:/\\d+)?) in\\b(?! \\d)");

  private InchText() {}

  /**
   * One size as a text has it.
   *
   * @param written as it stands there
   * @param thicknessIn of a screw that is told by its thickness and length
   */
  public record Size(String written, OptionalDouble thicknessIn, double lengthIn) {

    /** In millimetres, without the unit. */
    public String millimetres() {
      String length = InchText.millimetres(lengthIn);
      return thicknessIn.isPresent()
          ? InchText.millimetres(thicknessIn.getAsDouble()) + " x " + length
          : length;
    }
  }

  /** The text with another for each size in it. */
  public static String replaced(String text, Function<Size, String> other) {
    return SIZE.matcher(text).replaceAll(found -> other.apply(size(found)));
  }

  /** Under an inch to the tenth: a bolt of 12.7 mm is not one of 13. */
  public static String millimetres(double inches) {
    return BigDecimal.valueOf(inches * Inches.IN_MILLIMETRES)
        .setScale(inches < 1 ? 1 : 0, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static Size size(MatchResult found) {
    OptionalDouble thicknessIn =
        found.group(1) == null ? OptionalDouble.empty() : OptionalDouble.of(inches(found.group(1)));
    return new Size(found.group(), thicknessIn, inches(found.group(2)));
  }

  private static double inches(String written) {
    return Length.parse(written + " in");
  }
}
