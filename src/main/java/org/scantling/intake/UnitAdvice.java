package org.scantling.intake;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scantling.quantity.QuantityException;
import org.scantling.quantity.QuantityKind;

/** What a number without a usable unit may have meant: the readings that stay inside the bounds. */
final class UnitAdvice {
  /** Marks the bounds of a length where the key also takes a share. */
  static final String AS_LENGTH = " as length";

  private static final Pattern FRACTION = Pattern.compile("(\\d{1,3})/(\\d{1,3})");
  private static final Pattern NUMBER = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*([^\\d]*)");

  private UnitAdvice() {}

  /** Advice such as {@code Maybe 24 ft, 24 in or 24 m?}, or empty where nothing comes near. */
  static String of(QuantityException refused, QuantityKind kind, String text, Bounds.Range range) {
    List<String> meant =
        refused.maybe().map(List::of).orElseGet(() -> sensible(kind, text.strip(), range));
    return ProblemPhrases.maybe(meant);
  }

  /**
   * The same of a bare number that is a fall from row to row, or a share of their distance.
   *
   * @param path the key that takes both
   */
  static String ofFall(String text, String path, Bounds bounds) {
    if (!NUMBER.matcher(text).matches()) {
      return "";
    }
    return ProblemPhrases.maybe(
        Stream.concat(
                with(QuantityKind.PERCENT, text, bounds.range(path)).stream(),
                with(QuantityKind.LENGTH, text, bounds.range(path + AS_LENGTH)).stream()
                    .filter(each -> each.endsWith(" in")))
            .toList());
  }

  private static List<String> sensible(QuantityKind kind, String text, Bounds.Range range) {
    Matcher fraction = FRACTION.matcher(text);
    if (kind == QuantityKind.PERCENT && fraction.matches()) {
      return Stream.of(
              fraction.group(1) + ":" + fraction.group(2),
              ProblemPhrases.say("slope.per-foot", "rise", text))
          .filter(each -> holds(kind, each, range))
          .toList();
    }
    List<String> asItStands = with(kind, text, range);
    Matcher number = NUMBER.matcher(text);
    if (!asItStands.isEmpty() || !number.matches()) {
      return asItStands;
    }
    String unit = number.group(2).strip();
    return with(kind, number.group(1), range).stream()
        .filter(each -> near(unit, each.substring(each.indexOf(' ') + 1)))
        .toList();
  }

  /** Another unit is another amount, not a slip: but a pound of snow is one a square foot. */
  private static boolean near(String unit, String known) {
    return unit.matches("(?i)lbs?|pounds?")
        ? known.equals("psf") || known.equals("lb")
        : unit.startsWith(known + " ")
            || NearMiss.nearest(unit, List.of(known, known + "s")).isPresent();
  }

  private static List<String> with(QuantityKind kind, String number, Bounds.Range range) {
    return units(kind)
        .map(unit -> number + " " + unit)
        .filter(text -> holds(kind, text, range))
        .toList();
  }

  private static boolean holds(QuantityKind kind, String text, Bounds.Range range) {
    try {
      return range.holds(kind.parse(text));
    } catch (QuantityException noNumber) {
      return false;
    }
  }

  private static Stream<String> units(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> Stream.of("ft", "in", "m", "cm", "mm");
      case LOAD -> Stream.of("psf", "kPa");
      case WIND_SPEED -> Stream.of("mph", "km/h", "m/s");
      case PERCENT -> Stream.of("%");
      case DEGREE_DAYS -> Stream.of("F-days", "C-days");
      case TEMPERATURE -> Stream.of("F", "C");
      case FORCE -> Stream.of("lb", "kN");
      case AREA -> Stream.of("sq ft", "m2");
    };
  }
}
