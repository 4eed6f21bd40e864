package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
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
 * @param pressed load along it, its own weight counted
 * @param moment greatest bending
 * @param crossMomentInLb bending square to that
 * @param along true where it is bent along the walk
 * @param column pressure, buckling counted
 * @param stability of rolling over
 * @param offsetIn how far the load misses the centre
 * @param values with the factor of the load
 */
public record PostScene(
    LoadCombination combination,
    Rectangle section,
    PostForce pressed,
    PostMoment moment,
    double crossMomentInLb,
    boolean along,
    Column column,
    BeamStability stability,
    double offsetIn,
    AdjustedValues values)
    implements Calculated {

  public double pressedLb() {
    return pressed.lb();
  }

  public double momentInLb() {
    return moment.inLb();
  }

  /** Pressure and bending together. */
  public CombinedStress combined() {
    return CombinedStress.of(
        column,
        new BentAxis(bending(), section.depthIn(), offsetIn),
        new BentAxis(cross(), section.breadthIn(), 0),
        stability);
  }

  /** Bending alone. */
  public Bending bending() {
    return Bending.of(momentInLb(), section, values, stability);
  }

  private Bending cross() {
    return Bending.of(crossMomentInLb, section.turned(), values.bending());
  }

  double ratio() {
    return combined().check().ratio();
  }

  /** From the load along it and its bending to the sum of both. */
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>(column.lines());
    lines.addAll(bending().lines());
    if (crossMomentInLb > 0) {
      lines.add(
          FormulaLine.of("cross-bending", Measure.psi(cross().stressPsi()))
              .with("solved", Measure.inchPounds(crossMomentInLb))
              .with("breadth", Measure.inches(section.breadthIn())));
      lines.add(stability.rolling());
    }
    lines.addAll(combined().lines());
    return lines;
  }
}
