package org.scantling.visit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.quantity.CountWord;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;
import org.scantling.sayings.Sayings;

/**
 * Timber as it is asked for at a yard: {@code seven 2x4x8}, {@code 10 ft 4x4 posts}, {@code 6 ft
 * header}. Whatever is not said is not known.
 *
 * @param count how many
 * @param size nominal size, such as 2x4
 * @param length one piece, as it is written with its unit
 */
record TimberPieces(OptionalInt count, Optional<String> size, Optional<String> length) {
  static final String NO_COUNT = "no-count";
  static final String NO_SIZE = "no-size";
  static final String NO_LENGTH = "no-length";

  private static final String FRACTION = "(?:\\d{1,3}/\\d{1,2})";
  private static final String NUMBER =
      "(?:\\d{1,5}(?:\\.\\d{1,4})?(?:[ -]" + FRACTION + ")?|" + FRACTION + ")";
  private static final String LENGTH =
      "(?:\\d{1,3}\\s*(?:'|ft\\b|foot\\b|feet\\b)\\s*-?\\s*"
          + NUMBER
          + "\\s*(?:\"|in\\b|inch\\b|inches\\b)|"
          + NUMBER
          + "[\\s-]*(?:'|\"|ft\\b|foot\\b|feet\\b|in\\b|inch\\b|inches\\b|mm\\b|cm\\b|m\\b))";
  private static final Pattern SIZED =
      Pattern.compile(
          "(?<![\\d./])(\\d{1,3})\\s*x\\s*(\\d{1,3})(?:\\s*x\\s*("
              + LENGTH
              + "|\\d{1,5}(?:\\.\\d{1,4})?))?(?![\\dx])");
  private static final Pattern LONG = Pattern.compile(LENGTH);
  private static final Pattern COUNT =
      Pattern.compile("(?<![\\d./-])\\b(\\d{1,4}|" + String.join("|", CountWord.all()) + ")\\b");

  /** From this figure on a size is in millimeters. */
  private static final int METRIC_FROM = 16;

  private static final int MILLIMETRES_FROM = 100;

  /**
   * What a line asks for.
   *
   * @return empty where the line holds neither a size nor a length
   */
  static Optional<TimberPieces> parse(String line) {
    String rest =
        line.toLowerCase(Locale.ROOT)
            .replaceAll("[\u2032\u2019]", "'")
            .replaceAll("[\u2033\u201d]", "\"");
    Optional<String> size = Optional.empty();
    Optional<String> length = Optional.empty();
    Matcher sized = SIZED.matcher(rest);
    if (sized.find()) {
      size = Optional.of(sized.group(1) + "x" + sized.group(2));
      length = Optional.ofNullable(sized.group(3)).map(text -> withUnit(text, sized.group(1)));
      rest = rest.substring(0, sized.start()) + " ; " + rest.substring(sized.end());
    }
    Matcher longs = LONG.matcher(rest);
    if (length.isEmpty() && longs.find()) {
      length = Optional.of(longs.group().replaceAll("(?<=\\d)-(?=[a-z])", " "));
      rest = rest.substring(0, longs.start()) + " ; " + rest.substring(longs.end());
    }
    return size.isEmpty() && length.isEmpty()
        ? Optional.empty()
        : Optional.of(new TimberPieces(count(rest), size, length));
  }

  private static OptionalInt count(String rest) {
    Matcher match = COUNT.matcher(rest);
    if (!match.find()) {
      return OptionalInt.empty();
    }
    OptionalInt word = CountWord.of(match.group(1));
    return word.isPresent() ? word : OptionalInt.of(Integer.parseInt(match.group(1)));
  }

  /** A yard names the length of inch timber in feet, of metric timber in meters or millimeters. */
  private static String withUnit(String text, String thickness) {
    if (!text.matches("[\\d.]+")) {
      return text;
    }
    if (Integer.parseInt(thickness) < METRIC_FROM) {
      return text + " ft";
    }
    return text + (Double.parseDouble(text) >= MILLIMETRES_FROM ? " mm" : " m");
  }

  OptionalDouble lengthIn() {
    return length.isPresent()
        ? OptionalDouble.of(QuantityKind.LENGTH.parse(length.get()))
        : OptionalDouble.empty();
  }

  /** Whether its length can be on a tape at all. */
  boolean sound() {
    try {
      return lengthIn().orElse(1) > 0;
    } catch (QuantityException noLength) {
      return false;
    }
  }

  /** As it is kept: three parts, whether known or not. */
  String kept() {
    return (count.isPresent() ? String.valueOf(count.getAsInt()) : NO_COUNT)
        + ", "
        + size.orElse(NO_SIZE)
        + ", "
        + length.orElse(NO_LENGTH);
  }

  /** As it was understood, in words. */
  String said(Sayings sayings) {
    String many =
        count.isPresent()
            ? sayings.say("pieces-count", "count", String.valueOf(count.getAsInt())) + " "
            : "";
    String each = size.orElse("");
    String pieceLength =
        length.map(text -> sayings.say("pieces-length", "length", text)).orElse("");
    String comma = each.isEmpty() || pieceLength.isEmpty() ? "" : ", ";
    return (many + each + comma + pieceLength).strip();
  }

  /** What {@link #kept} made. */
  static TimberPieces ofKept(String kept) {
    List<String> parts = Arrays.asList(kept.split(", "));
    return new TimberPieces(
        parts.get(0).equals(NO_COUNT)
            ? OptionalInt.empty()
            : OptionalInt.of(Integer.parseInt(parts.get(0))),
        Optional.of(parts.get(1)).filter(text -> !text.equals(NO_SIZE)),
        Optional.of(parts.get(2)).filter(text -> !text.equals(NO_LENGTH)));
  }

  /** True for what {@link #kept} made, which is taken as it is. */
  static boolean isKept(String text) {
    return text.matches("(?:\\d{1,4}|no-count), (?:\\d+x\\d+|no-size), [^,]+");
  }
}
