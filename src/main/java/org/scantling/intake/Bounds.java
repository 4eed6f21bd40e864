package org.scantling.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.quantity.Length;
import org.scantling.quantity.QuantityKind;

/**
 * How small and how large a number may be before it is surely a slip of the pen. Generous on
 * purpose: what the structure can bear is for the rules to say.
 */
final class Bounds {
  private static final String RESOURCE = "/org/scantling/schema/bounds.csv";
  private static final double SLACK = 1e-9;
  private static final Map<String, QuantityKind> KINDS =
      Map.of(
          "in", QuantityKind.LENGTH,
          "ft", QuantityKind.LENGTH,
          "psf", QuantityKind.LOAD,
          "mph", QuantityKind.WIND_SPEED,
          "%", QuantityKind.PERCENT,
          "F-days", QuantityKind.DEGREE_DAYS,
          "F", QuantityKind.TEMPERATURE);
  private static final Map<String, QuantityKind> METRIC_KINDS =
      Map.of(
          "kpa", QuantityKind.LOAD,
          "kn/m2", QuantityKind.LOAD,
          "kn/m²", QuantityKind.LOAD,
          "m/s", QuantityKind.WIND_SPEED,
          "km/h", QuantityKind.WIND_SPEED,
          "c-days", QuantityKind.DEGREE_DAYS);
  private static final Bounds OF_THE_PROGRAM = load();

  /**
   * One row of the table.
   *
   * @param low smallest amount in the unit used inside
   * @param high largest amount in the unit used inside
   * @param least the smallest as a person reads it
   * @param most the largest as a person reads it
   */
  record Range(double low, double high, String least, String most) {
    private static final Pattern METRIC_LENGTH = Pattern.compile("-?[\\d.]+\\s*[mc]?m");
    private static final Pattern METRIC_AMOUNT =
        Pattern.compile("-?[\\d.]+\\s*(kPa|kN/m2|kN/m²|m/s|km/h|C-days)", Pattern.CASE_INSENSITIVE);

    /** The range as the writer of the given text thinks: what is metric is answered in metric. */
    String words(String written) {
      if (METRIC_LENGTH.matcher(written).matches()) {
        return words(Length.metric(low), Length.metric(high));
      }
      Matcher metric = METRIC_AMOUNT.matcher(written);
      return metric.matches() ? inUnit(metric.group(1)) : words(least, most);
    }

    private static String words(String least, String most) {
      return ProblemPhrases.say("accepted.range", "least", least, "most", most);
    }

    /** Rounded so that neither end is outside. */
    private String inUnit(String unit) {
      QuantityKind kind = kind(METRIC_KINDS, unit.toLowerCase(Locale.ROOT));
      double one = kind.parse("1 " + unit);
      int places = kind == QuantityKind.LOAD ? 2 : 0;
      String lowest = rounded(low / one, places, RoundingMode.CEILING);
      String highest = rounded(high / one, places, RoundingMode.FLOOR);
      return words(lowest + " " + unit, highest + " " + unit);
    }

    private static String rounded(double amount, int places, RoundingMode mode) {
      BigDecimal rounded = BigDecimal.valueOf(amount).setScale(places, mode);
      return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** No length at all, which is none in any unit, where there may be none. */
    boolean isNone(String written) {
      return written.strip().equals("0") && holds(0);
    }

    boolean holds(double amount) {
      double slack = SLACK * Math.max(Math.abs(low), Math.abs(high));
      return amount >= low - slack && amount <= high + slack;
    }
  }

  private final SortedMap<String, Range> ranges;

  private Bounds(SortedMap<String, Range> ranges) {
    this.ranges = ranges;
  }

  static Bounds ofTheProgram() {
    return OF_THE_PROGRAM;
  }

  SortedMap<String, Range> ranges() {
    return ranges;
  }

  /** The range of a field; places in lists do not matter, but that it is one of a list may. */
  Range range(String path) {
    String item = path.replaceAll("\\[\\d+]", "[]");
    String plain = ranges.containsKey(item) ? item : item.replace("[]", "");
    return Optional.ofNullable(ranges.get(plain))
        .orElseThrow(() -> new IllegalStateException("no row for " + plain + " in " + RESOURCE));
  }

  private static Bounds load() {
    try (InputStream in = Bounds.class.getResourceAsStream(RESOURCE)) {
      SortedMap<String, Range> ranges = new TreeMap<>();
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> line.split(",", -1))
          .forEach(cells -> ranges.put(cells[0], range(cells)));
      return new Bounds(ranges);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(RESOURCE + " must be readable", unreadable);
    }
  }

  private static Range range(String[] cells) {
    String unit = cells[3].isEmpty() ? "" : " " + cells[3];
    return new Range(
        amount(cells[1], cells[3]), amount(cells[2], cells[3]), cells[1] + unit, cells[2] + unit);
  }

  private static double amount(String number, String unit) {
    return unit.isEmpty()
        ? Double.parseDouble(number)
        : kind(KINDS, unit).parse(number + " " + unit);
  }

  private static QuantityKind kind(Map<String, QuantityKind> kinds, String unit) {
    return Optional.ofNullable(kinds.get(unit))
        .orElseThrow(() -> new IllegalStateException("no unit " + unit + " in " + RESOURCE));
  }
}
