package org.scantling.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
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
  private static final Bounds OF_THE_PROGRAM = load();

  /**
   * One row of the table.
   *
   * @param low smallest amount in the unit used inside
   * @param high largest amount in the unit used inside
   * @param words both as a person reads them
   */
  record Range(double low, double high, String words) {
    private static final Pattern METRIC_LENGTH = Pattern.compile("-?[\\d.]+\\s*[mc]?m");

    /** The range as the writer of the given text thinks: a metric length is answered in metric. */
    String words(String written) {
      return METRIC_LENGTH.matcher(written).matches()
          ? "from " + Length.metric(low) + " to " + Length.metric(high)
          : words;
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

  /** The range of a field; places in lists do not matter. */
  Range range(String path) {
    String plain = path.replaceAll("\\[\\d+]", "");
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
    String words = "from " + cells[1] + unit + " to " + cells[2] + unit;
    return new Range(amount(cells[1], cells[3]), amount(cells[2], cells[3]), words);
  }

  private static double amount(String number, String unit) {
    return unit.isEmpty() ? Double.parseDouble(number) : KINDS.get(unit).parse(number + " " + unit);
  }
}
