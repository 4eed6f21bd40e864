package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/**
 * The live load, snow or wind of one combination on one beam: what comes and goes. It is the same
 * for every size of beam that is tried, and so is its sag for EI = 1, which is worked out when a
 * size first asks for it.
 */
final class Passing {
  private final LoadCombination combination;
  private final ContinuousBeam beam;
  private final BeamResult result;
  private final boolean spread;
  private Sags sags;

  /**
   * @param spread false where one person stands in for the live load; a person is checked for
   *     strength only
   */
  Passing(LoadCombination combination, ContinuousBeam beam, BeamResult result, boolean spread) {
    this.combination = combination;
    this.beam = beam;
    this.result = result;
    this.spread = spread;
  }

  LoadCombination combination() {
    return combination;
  }

  BeamResult result() {
    return result;
  }

  boolean spread() {
    return spread;
  }

  Sags sags() {
    if (sags == null) {
      sags = Sags.of(result, beam);
    }
    return sags;
  }
}
