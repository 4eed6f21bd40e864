package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * The length of a post that counts when it bows out.
 *
 * <p>Source: NDS, 2018, 3.7.1.2 and Appendix G.
 *
 * @param endFactor Ke, by how the ends are held, 0 or more
 * @param heightIn of the post between its ends, 0 or more
 */
public record BucklingLength(double endFactor, double heightIn) implements Calculated {
  public BucklingLength {
    Require.zeroOrMore("end factor Ke", endFactor, "");
    Require.zeroOrMore("height that buckles", heightIn, "in");
  }

  /** le = Ke·l in inches. */
  public double lengthIn() {
    return endFactor * heightIn;
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("effective-height", Measure.inches(lengthIn()))
            .with("factor", Measure.ratio(endFactor))
            .with("height", Measure.inches(heightIn)));
  }
}
