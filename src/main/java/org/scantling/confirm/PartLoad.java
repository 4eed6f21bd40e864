package org.scantling.confirm;

import org.jspecify.annotations.Nullable;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/**
 * What one kind of load, lying in one way, does to a beam. Combinations are added up from a few of
 * them, so what each asks by itself is worked once and bounds many sums.
 */
final class PartLoad {
  private final BeamResult result;
  private final ContinuousBeam beam;
  private @Nullable BeamDemand demand;
  private @Nullable Sags sags;

  PartLoad(BeamResult result, ContinuousBeam beam) {
    this.result = result;
    this.beam = beam;
  }

  BeamResult result() {
    return result;
  }

  BeamDemand demand() {
    if (demand == null) {
      demand = BeamDemand.of(result, beam.cuts());
    }
    return demand;
  }

  Sags sags() {
    if (sags == null) {
      sags = Sags.of(result, beam);
    }
    return sags;
  }
}
