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
  private final Lying lying;
  private final ContinuousBeam beam;
  private final BeamResult result;
  private Sags sags;

  Passing(Lying lying, ContinuousBeam beam, BeamResult result) {
    this.lying = lying;
    this.beam = beam;
    this.result = result;
  }

  Lying lying() {
    return lying;
  }

  LoadCombination combination() {
    return lying.combination();
  }

  BeamResult result() {
    return result;
  }

  /** False where one person stands in for the live load; a person is checked for strength only. */
  boolean spread() {
    return lying.personAtIn().isEmpty();
  }

  Sags sags() {
    if (sags == null) {
      sags = Sags.of(result, beam);
    }
    return sags;
  }
}
