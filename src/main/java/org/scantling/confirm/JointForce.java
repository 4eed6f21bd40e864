package org.scantling.confirm;

import java.util.List;
import java.util.Optional;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;

/**
 * What one joint must hold in one combination.
 *
 * @param downLb pressing the upper timber on the lower one, 0 or more
 * @param liftLb pulling it off, 0 or more
 * @param sideLb pushing it sideways, 0 or more
 * @param worked how it was worked; none for what beams or frames were solved for
 */
record JointForce(
    LoadCombination combination,
    double downLb,
    double liftLb,
    double sideLb,
    Optional<Calculated> worked) {
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

  /** A force that beams or frames were solved for. */
  JointForce(LoadCombination combination, double downLb, double liftLb, double sideLb) {
    this(combination, downLb, liftLb, sideLb, Optional.empty());
  }

  /** The same force with how it was worked. */
  JointForce as(Calculated working) {
    return new JointForce(combination, downLb, liftLb, sideLb, Optional.of(working));
  }

  List<FormulaLine> lines() {
    return worked.map(Calculated::lines).orElse(List.of());
  }
}
