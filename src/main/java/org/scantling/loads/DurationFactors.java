package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * How much more wood bears for a short while: C_D by the kind of load.
 *
 * @param permanentFactor dead load and vines, above zero
 * @param snowFactor snow, above zero
 * @param roofLiveFactor roof live load, above zero
 * @param windFactor wind, above zero
 *     <p>Source: NDS, 2018, table 2.3.2
 */
public record DurationFactors(
    double permanentFactor, double snowFactor, double roofLiveFactor, double windFactor) {
  public DurationFactors {
    Require.positive("load duration factor, permanent", permanentFactor, "");
    Require.positive("load duration factor, snow", snowFactor, "");
    Require.positive("load duration factor, roof live", roofLiveFactor, "");
    Require.positive("load duration factor, wind", windFactor, "");
  }

  /** C_D of a combination: that of its shortest lasting load. */
  public double of(LoadCombination combination) {
    return switch (combination.shortestLoad()) {
      case DEAD, VINES -> permanentFactor;
      case SNOW -> snowFactor;
      case ROOF_LIVE -> roofLiveFactor;
      case WIND -> windFactor;
    };
  }
}
