package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.BeamResult;

/**
 * One combination on one beam.
 *
 * @param all everything in it
 * @param permanent its dead load and vines alone
 * @param passing its live load, snow or wind alone
 */
record BeamCase(BeamResult all, BeamResult permanent, Passing passing) {
  LoadCombination combination() {
    return passing.combination();
  }
}
