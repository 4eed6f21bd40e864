package org.scantling.tables;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.scantling.quantity.Unit;

/** The words of the {@code unit} column. */
final class UnitWords {
  /** Of symbols, which stand for more than the numbers of rules do. */
  private static final Map<String, Unit> PRINTED =
      Map.ofEntries(
          Map.entry("in", Unit.INCH),
          Map.entry("ft", Unit.FOOT),
          Map.entry("sq ft", Unit.SQUARE_FOOT),
          Map.entry("lb", Unit.POUND),
          Map.entry("in-lb", Unit.INCH_POUND),
          Map.entry("lb/in", Unit.POUND_PER_INCH),
          Map.entry("lb/cu in", Unit.POUND_PER_CUBIC_INCH),
          Map.entry("psf", Unit.PSF),
          Map.entry("psf/ft", Unit.PSF_PER_FOOT),
          Map.entry("kPa", Unit.PSF_FROM_KPA),
          Map.entry("psi", Unit.PSI),
          Map.entry("pcf", Unit.PCF),
          Map.entry("mph", Unit.MPH),
          Map.entry("deg", Unit.DEGREE),
          Map.entry("deg F", Unit.DEGREE_F),
          Map.entry("F-days", Unit.F_DAYS),
          Map.entry("Btu/cu ft", Unit.BTU_PER_CUBIC_FOOT),
          Map.entry("Btu/cu ft F", Unit.BTU_PER_CUBIC_FOOT_F),
          Map.entry("Btu/ft hr F", Unit.BTU_PER_FOOT_HOUR_F),
          Map.entry("count", Unit.COUNT),
          Map.entry("ratio", Unit.RATIO));

  /** Of the numbers of rows. */
  static final String[] OF_ROWS = {
    "in", "ft", "lb", "in-lb", "psf", "psi", "pcf", "mph", "deg", "percent", "count", "ratio"
  };

  private UnitWords() {}

  /** The unit of a row's number by one of the words that rows may have. */
  static Unit ofRows(String word) {
    // A symbol is never in percent, so that it alone is not among those.
    return PRINTED.getOrDefault(word, Unit.PERCENT);
  }

  /** The unit of a symbol by its word, if there is one. */
  static Optional<Unit> printed(String word) {
    return Optional.ofNullable(PRINTED.get(word));
  }

  static Set<String> allPrinted() {
    return new TreeSet<>(PRINTED.keySet());
  }
}
