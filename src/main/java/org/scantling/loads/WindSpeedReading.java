package org.scantling.loads;

/**
 * What kind of wind speed was given.
 *
 * <p>Codes before ASCE 7-10 print allowable-stress speeds (85 to 90 mph in most of the country),
 * later ones strength-level speeds. The two must never be mixed: a low speed is asked about, not
 * changed.
 *
 * @param windSpeedMph the speed as given, mph
 * @param kind what it looks like
 * @param asAllowableStressMph the allowable-stress speed if the given one is strength level, mph
 * @param asStrengthLevelMph the strength-level speed if the given one is allowable stress, mph
 */
public record WindSpeedReading(
    double windSpeedMph, Kind kind, double asAllowableStressMph, double asStrengthLevelMph) {
  private static final double WIND_LOAD_FACTOR = 0.6;

  /** What a wind speed looks like. */
  public enum Kind {
    /** Slower than any code's design speed. */
    TOO_SLOW,
    /** In the range of the older codes' allowable-stress speeds: ask which is meant. */
    PERHAPS_ALLOWABLE_STRESS,
    /** In the range of strength-level speeds. */
    STRENGTH_LEVEL,
    /** Faster than any code's design speed. */
    TOO_FAST
  }

  public WindSpeedReading {
    Argument.positive("wind speed (mph)", windSpeedMph);
  }

  /**
   * Judges a given wind speed.
   *
   * @param windSpeedMph as given, mph, above zero
   * @param limits where belief begins and ends
   * @return the kind, and the speed carried over to the other level: V_asd = V_ult √0.6
   * @throws IllegalArgumentException if the speed is not above zero
   *     <p>Source: IBC, 2018, section 1609.3.1 (from memory)
   *     <p>Worked number: 115 mph strength level is 89 mph allowable stress.
   */
  public static WindSpeedReading of(double windSpeedMph, WindSpeedLimits limits) {
    double rootFactor = Math.sqrt(WIND_LOAD_FACTOR);
    return new WindSpeedReading(
        windSpeedMph,
        kind(windSpeedMph, limits),
        windSpeedMph * rootFactor,
        windSpeedMph / rootFactor);
  }

  private static Kind kind(double windSpeedMph, WindSpeedLimits limits) {
    if (windSpeedMph < limits.plausibleFromMph()) {
      return Kind.TOO_SLOW;
    }
    if (windSpeedMph < limits.strengthFromMph()) {
      return Kind.PERHAPS_ALLOWABLE_STRESS;
    }
    return windSpeedMph <= limits.plausibleToMph() ? Kind.STRENGTH_LEVEL : Kind.TOO_FAST;
  }
}
