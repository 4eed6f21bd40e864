package org.scantling.confirm;

import org.jspecify.annotations.Nullable;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.BeamResult;

/** One combination on one beam. A long beam has hundreds, of which few work it hardest. */
final class BeamCase {
  private final BeamResult permanent;
  private final TransientLoad passing;
  private @Nullable BeamResult all;

  /**
   * @param permanent its dead load and vines alone
   * @param passing its live load, snow or wind alone
   */
  BeamCase(BeamResult permanent, TransientLoad passing) {
    this.permanent = permanent;
    this.passing = passing;
  }

  BeamResult permanent() {
    return permanent;
  }

  TransientLoad passing() {
    return passing;
  }

  /** Everything in it, added up when somebody asks. */
  BeamResult all() {
    if (all == null) {
      all = passing.with(permanent);
    }
    return all;
  }

  LoadCombination combination() {
    return passing.combination();
  }
}
