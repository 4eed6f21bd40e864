package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How stiffly a piece resists being stretched by the fasteners of a row.
 *
 * @param modulus E' of the piece
 * @param breadthIn of the section that counts, above 0
 * @param depthIn of it, above 0
 */
public record AxialStiffness(AdjustedStress modulus, double breadthIn, double depthIn)
    implements Calculated {
  public AxialStiffness {
    Require.positive("breadth", breadthIn, "in");
    Require.positive("depth", depthIn, "in");
  }

  /** E·A in pounds. */
  public double lb() {
    return modulus.psi() * (breadthIn * depthIn);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        modulus.line("modulus"),
        FormulaLine.of("stretch", Measure.pounds(lb()))
            .with("stiffness", Measure.psi(modulus.psi()))
            .with("breadth", Measure.inches(breadthIn))
            .with("depth", Measure.inches(depthIn)));
  }
}
