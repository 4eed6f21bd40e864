package org.scantling.quantity;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The units that people write, and how each becomes the unit used inside. Lengths have a grammar of
 * their own, {@link LengthText}.
 *
 * <p>Source: NIST SP 811, 2008 edition, Appendix B.8 (conversion factors, from memory).
 */
final class WrittenUnits {
  private static final double M_PER_S_IN_A_MPH = 0.44704;
  private static final Scale SAME = new Scale(1, 0);

  private static final double KILOMETRES_IN_A_KNOT = 1.852;

  /** In a metre a second. */
  private static final double KILOMETRES_PER_HOUR = 3.6;

  private static final Scale KILOPASCAL = new Scale(1 / Unit.PSF.toMetric(1), 0);

  private static final Scale SQUARE_METRE = new Scale(1 / Unit.SQUARE_FOOT.toMetric(1), 0);

  private static final Map<QuantityKind, Map<String, Scale>> SCALES =
      Map.of(
          QuantityKind.LENGTH,
          Map.of(),
          QuantityKind.LOAD,
          named(
              Map.of(
                  "psf p.s.f. lb/ft2 lb/ft² lbs/ft2 lb/sqft lbs/sqft lb/sq_ft lbs/sq_ft"
                      + " lb_per_sq_ft lbs_per_sq_ft pounds_per_square_foot",
                  SAME,
                  "kpa kn/m2 kn/m²",
                  KILOPASCAL)),
          QuantityKind.WIND_SPEED,
          named(
              Map.of(
                  "mph m.p.h. mi/h miles_per_hour miles/hour",
                  SAME,
                  "km/h kmh kph km/hr",
                  new Scale(1 / (Unit.MPH.toMetric(1) * KILOMETRES_PER_HOUR), 0),
                  "knots knot kt kts",
                  new Scale(KILOMETRES_IN_A_KNOT / (Unit.MPH.toMetric(1) * KILOMETRES_PER_HOUR), 0),
                  "m/s mps",
                  new Scale(1 / M_PER_S_IN_A_MPH, 0))),
          QuantityKind.PERCENT,
          Map.of(),
          QuantityKind.DEGREE_DAYS,
          Map.of("f-days", SAME, "c-days", new Scale(1.8, 0)),
          QuantityKind.TEMPERATURE,
          Map.of("f", SAME, "c", new Scale(1.8, 32)),
          QuantityKind.FORCE,
          Map.of("lb", SAME, "lbf", SAME, "kn", new Scale(1 / Unit.POUND.toMetric(1), 0)),
          QuantityKind.AREA,
          Map.of("sq ft", SAME, "ft2", SAME, "ft²", SAME, "m2", SQUARE_METRE, "m²", SQUARE_METRE));

  private WrittenUnits() {}

  /**
   * A linear change of unit.
   *
   * @param factor what one written unit is in the unit used inside
   * @param offset what a written zero is
   */
  record Scale(double factor, double offset) {
    double inside(double written) {
      return written * factor + offset;
    }
  }

  /** Several names of one unit, with spaces between them. */
  private static Map<String, Scale> named(Map<String, Scale> byNames) {
    Map<String, Scale> each = new HashMap<>();
    byNames.forEach(
        (names, scale) -> {
          for (String name : names.split(" ")) {
            each.put(name.replace('_', ' '), scale);
          }
        });
    return Map.copyOf(each);
  }

  static Optional<Scale> scale(QuantityKind kind, String unit) {
    String plain = unit.strip().toLowerCase(Locale.ROOT).replace("°", "").replace('·', '-');
    return Optional.ofNullable(SCALES.getOrDefault(kind, Map.of()).get(plain));
  }
}
