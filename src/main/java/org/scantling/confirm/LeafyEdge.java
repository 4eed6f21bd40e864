package org.scantling.confirm;

import java.util.List;
import org.scantling.loads.FoliageWind;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * Wind on the edge of the climbers that lie on the top.
 *
 * @param wind on it
 * @param thickIn how thick they lie
 * @param atIn height of its middle above ground
 */
public record LeafyEdge(FoliageWind wind, double thickIn, double atIn) implements Calculated {
  @Override
  public List<FormulaLine> lines() {
    return wind.lines().stream()
        .map(
            line ->
                line.as("edge")
                    .with("thick", Measure.inches(thickIn))
                    .with("at", Measure.inches(atIn)))
        .toList();
  }

  /** Nothing to tell where nothing grows up there. */
  List<FormulaLine> linesIfAny() {
    return wind.worstLb() > 0 ? lines() : List.of();
  }

  /** The line of the push at the top, with what of it is this. */
  FormulaLine in(FormulaLine top) {
    return wind.worstLb() > 0
        ? top.as("top-leafy").with("edge", Measure.pounds(wind.worstLb()))
        : top;
  }
}
