package org.scantling.confirm;

import org.scantling.loads.LoadCombination;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.BentAxis;
import org.scantling.timber.Column;
import org.scantling.timber.CombinedStress;
import org.scantling.timber.Rectangle;

/**
 * A square post under the load and the push that together work it hardest: what is gone over by
 * hand.
 *
 * @param pressedLb load along it, its own weight counted
 * @param momentInLb greatest bending
 * @param crossMomentInLb bending square to that
 * @param along true where it is bent along the walk
 * @param column pressure, buckling counted
 * @param heightIn what buckles, before the factor of the effective length
 * @param endFactor K_e
 * @param straightnessFactor c
 * @param unbracedIn length that may roll over
 * @param stability of rolling over
 * @param offsetIn how far the load misses the centre
 * @param values with the factor of the load
 */
public record PostScene(
    LoadCombination combination,
    Rectangle section,
    double pressedLb,
    double momentInLb,
    double crossMomentInLb,
    boolean along,
    Column column,
    double heightIn,
    double endFactor,
    double straightnessFactor,
    double unbracedIn,
    BeamStability stability,
    double offsetIn,
    AdjustedValues values) {

  /** Pressure and bending together. */
  public CombinedStress combined() {
    Bending cross = Bending.of(crossMomentInLb, section.turned(), values.bending());
    return CombinedStress.of(
        column,
        new BentAxis(bending(), section.depthIn(), offsetIn),
        new BentAxis(cross, section.breadthIn(), 0),
        stability);
  }

  /** Bending alone. */
  public Bending bending() {
    return Bending.of(momentInLb, section, values, stability);
  }

  double ratio() {
    return combined().check().ratio();
  }
}
