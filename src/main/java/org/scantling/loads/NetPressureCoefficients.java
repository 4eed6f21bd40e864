package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * One load case of a free-roof figure; plus presses down on the top, minus lifts it.
 *
 * @param windwardFactor C_NW of the windward half
 * @param leewardFactor C_NL of the leeward half
 *     <p>Source: ASCE 7, 2016, figures 27.3-4 to 27.3-7
 */
public record NetPressureCoefficients(double windwardFactor, double leewardFactor) {
  public NetPressureCoefficients {
    Require.finite("net pressure coefficient, windward", windwardFactor, "");
    Require.finite("net pressure coefficient, leeward", leewardFactor, "");
  }

  /** The same on both halves: what a figure's worst half asks, taken for the whole top. */
  public static NetPressureCoefficients even(double factor) {
    return new NetPressureCoefficients(factor, factor);
  }
}
