package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * How deep a lag screw goes into the piece that holds its point, its tapered tip left out.
 *
 * @param lengthIn of the screw
 * @param throughIn wood that it goes through before
 * @param tipIn the tapered end
 */
public record LagDepth(double lengthIn, double throughIn, double tipIn) implements Calculated {
  /** A screw that does not reach the lower timber holds next to nothing, never nothing at all. */
  private static final double LEAST_IN = 0.01;

  /**
   * The depth in inches.
   *
   * <p>Source: NDS, 2018, 12.1.4, from memory. Worked: 8 in through 3 1/2 in with a tip of 0.22 in
   * goes 4.28 in deep.
   */
  public double intoIn() {
    return Math.max(LEAST_IN, lengthIn - throughIn - tipIn);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("lag-depth", Measure.inches(intoIn()))
            .with("length", Measure.inches(lengthIn))
            .with("through", Measure.inches(throughIn))
            .with("tip", Measure.inches(tipIn)));
  }
}
