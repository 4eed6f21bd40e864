package org.scantling.loads;

/**
 * The speeds between which a given wind speed is believed.
 *
 * @param plausibleFromMph slower than this is no design speed of any code, mph, above zero
 * @param strengthFromMph from here on a speed is taken as strength level without a question, mph
 * @param plausibleToMph faster than this is no design speed of any code, mph
 */
public record WindSpeedLimits(
    double plausibleFromMph, double strengthFromMph, double plausibleToMph) {
  public WindSpeedLimits {
    Argument.positive("slowest design wind speed (mph)", plausibleFromMph);
    Argument.atMost(
        "slowest design wind speed (mph)",
        plausibleFromMph,
        "slowest strength-level speed (mph)",
        strengthFromMph);
    Argument.atMost(
        "slowest strength-level speed (mph)",
        strengthFromMph,
        "fastest design wind speed (mph)",
        plausibleToMph);
  }
}
