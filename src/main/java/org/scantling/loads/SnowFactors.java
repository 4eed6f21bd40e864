package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * The three factors that turn ground snow into roof snow.
 *
 * @param exposureFactor C_e, how freely the wind sweeps the top, above zero
 * @param thermalFactor C_t, 1.2 for a structure open to the air, above zero
 * @param importanceFactor I_s by risk category, above zero
 *     <p>Source: ASCE 7, 2016, tables 7.3-1, 7.3-2 and 1.5-2
 */
public record SnowFactors(double exposureFactor, double thermalFactor, double importanceFactor) {
  public SnowFactors {
    Require.positive("exposure factor C_e", exposureFactor, "");
    Require.positive("thermal factor C_t", thermalFactor, "");
    Require.positive("importance factor I_s", importanceFactor, "");
  }
}
