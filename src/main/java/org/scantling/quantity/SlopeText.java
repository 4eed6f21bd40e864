package org.scantling.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The fall of ground as builders write it: {@code 3 %}, {@code 1:12}, {@code 1 in 12}, {@code 1/4
 * in per ft}, {@code 6 in over 20 ft}, {@code level}.
 */
final class SlopeText {
  private static final String NUMBER = "(\\d{1,5}(?:\\.\\d{1,6})?)";
  private static final Pattern PERCENT =
      Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,20})?)\\s*(?:%|percent|per cent|pct)(?:\\s+grade)?");
  private static final Pattern ONE_IN_SOME =
      Pattern.compile(NUMBER + "\\s*(?::|\\bin\\b|\\bto\\b)\\s*" + NUMBER);
  private static final Pattern LINK =
      Pattern.compile(
          "\\s*(?:\\bper\\b|\\bover\\b|\\bin\\b|\\bto\\b|\\ba\\b|[:/](?=\\s*(?:ft|foot|m\\b)))\\s*");
  private static final Pattern ALONE =
      Pattern.compile("(?:each |every )?(ft|foot|m|meter|yd|yard)");
  private static final int HUNDRED = 100;
  private static final int YARD_FT = 3;

  private SlopeText() {}

  /** Per cent, or nothing when the text is no slope. */
  static Optional<Double> percent(String text) {
    String plain = LengthText.plain(text);
    Matcher percent = PERCENT.matcher(plain);
    if (percent.matches()) {
      return Optional.of(Double.parseDouble(percent.group(1)));
    }
    if (plain.equals("level") || plain.equals("flat")) {
      return Optional.of(0.0);
    }
    Matcher ratio = ONE_IN_SOME.matcher(plain);
    return ratio.matches()
        ? share(Double.parseDouble(ratio.group(1)), Double.parseDouble(ratio.group(2)))
        : riseOverRun(plain);
  }

  /** Every place where the text can be parted is tried: inches and the word in look alike. */
  private static Optional<Double> riseOverRun(String plain) {
    Matcher link = LINK.matcher(plain);
    while (link.find()) {
      Optional<Double> rise = length(plain.substring(0, link.start()));
      Optional<Double> run = run(plain.substring(link.end()));
      if (rise.isPresent() && run.isPresent()) {
        return share(rise.get(), run.get());
      }
    }
    return Optional.empty();
  }

  private static Optional<Double> run(String text) {
    Matcher alone = ALONE.matcher(text);
    if (!alone.matches()) {
      return length(text);
    }
    return switch (alone.group(1)) {
      case "m", "meter" -> length("1 m");
      case "yd", "yard" -> length(YARD_FT + " ft");
      default -> length("1 ft");
    };
  }

  private static Optional<Double> length(String text) {
    try {
      return LengthText.inches(text.toLowerCase(Locale.ROOT));
    } catch (QuantityException improper) {
      return Optional.empty();
    }
  }

  private static Optional<Double> share(double rise, double run) {
    return run > 0 ? Optional.of(HUNDRED * rise / run) : Optional.empty();
  }
}
