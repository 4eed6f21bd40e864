package org.scantling.confirm;

import org.scantling.loads.LoadCombination;

/**
 * What one joint must hold in one combination.
 *
 * @param downLb pressing the upper timber on the lower one, 0 or more
 * @param liftLb pulling it off, 0 or more
 * @param sideLb pushing it sideways, 0 or more
 */
record JointForce(LoadCombination combination, double downLb, double liftLb, double sideLb) {
  JointForce {
    if (!(downLb >= 0 && liftLb >= 0 && sideLb >= 0)) {
      throw new IllegalArgumentException(
          "forces on a joint must be zero or more, found "
              + downLb
              + " lb down, "
              + liftLb
              + " lb up, "
              + sideLb
              + " lb sideways");
    }
  }

  /** Pressed or lifted by a force that is positive upward. */
  static JointForce of(LoadCombination combination, double upLb, double sideLb) {
    return new JointForce(combination, Math.max(0, -upLb), Math.max(0, upLb), sideLb);
  }
}
