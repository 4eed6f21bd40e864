package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.BeamResult;

/**
 * One combination on one beam.
 *
 * @param combination the combination
 * @param all everything in it
 * @param permanent its dead load and vines alone
 * @param passing its live load, snow or wind alone
 * @param spread false where one person stands in for the live load; a person is checked for
 *     strength only
 */
record BeamCase(
    LoadCombination combination,
    BeamResult all,
    BeamResult permanent,
    BeamResult passing,
    boolean spread) {

  /** True where the climbers are counted. */
  boolean vines() {
    return combination != LoadCombination.UPLIFT;
  }
}
