package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.ground.ConcreteOverSoil;
import org.scantling.ground.VerticalBearing;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * What presses on the bottom of a hole.
 *
 * @param load what stands on it
 * @param holeIn diameter of the hole
 * @param own what the concrete in it presses with besides
 * @param pressed the pressure under both
 */
public record BorneFoot(FootLoad load, double holeIn, ConcreteOverSoil own, VerticalBearing pressed)
    implements Calculated {
  @Override
  public List<FormulaLine> lines() {
    List<FormulaLine> lines = new ArrayList<>(load.lines());
    lines.add(
        FormulaLine.of("area", Measure.squareFeet(pressed.areaIn2()))
            .with("hole", Measure.feet(holeIn)));
    lines.addAll(own.lines());
    pressed.lines().forEach(line -> lines.add(load.solved() ? onPier(line) : line));
    return lines;
  }

  /** Of a load that frames were solved for, no line above tells. */
  private static FormulaLine onPier(FormulaLine line) {
    return line.as("pressure-pier").calling("load", "solved");
  }
}
