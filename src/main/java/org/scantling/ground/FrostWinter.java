package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * A design winter at a surface.
 *
 * @param freezingIndexFDays air-freezing index, °F-days, above zero
 * @param surfaceFactor n, share of it that reaches the ground's surface, above zero
 * @param seasonDays length of the freezing season, days, above zero
 * @param meanAnnualF mean annual air temperature, °F, 32 or more
 */
public record FrostWinter(
    double freezingIndexFDays, double surfaceFactor, double seasonDays, double meanAnnualF) {
  private static final double FREEZING_F = 32;

  public FrostWinter {
    Require.positive("air-freezing index", freezingIndexFDays, "°F·days");
    Require.positive("surface factor n", surfaceFactor, "");
    Require.positive("freezing season", seasonDays, "days");
    Require.finite("mean annual temperature", meanAnnualF, "°F");
    if (meanAnnualF < FREEZING_F) {
      throw new IllegalArgumentException(
          "mean annual temperature "
              + meanAnnualF
              + " F must be 32 or more; colder ground stays frozen and is a case for an engineer");
    }
  }

  /** Index at the surface n FI, °F-days. */
  public double surfaceIndexFDays() {
    return surfaceFactor * freezingIndexFDays;
  }

  /** Mean frost at the surface over the season, v_s = n FI / t, °F below freezing. */
  public double surfaceFrostF() {
    return surfaceIndexFDays() / seasonDays;
  }

  /** Warmth of the ground before winter, v_0, °F above freezing. */
  public double initialWarmthF() {
    return meanAnnualF - FREEZING_F;
  }
}
