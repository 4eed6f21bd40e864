package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;

/**
 * How the wind bends a post that the ground holds, where it is bent most.
 *
 * @param windFactor what the combination counts of the wind
 * @param pushedInLb moment of the push at the ground, strength level
 * @param groundRatio greatest moment over that at the ground
 */
public record PostMoment(double windFactor, double pushedInLb, double groundRatio)
    implements Calculated {

  /** A moment that a frame was solved for. */
  static PostMoment solved(double momentInLb) {
    return new PostMoment(1, momentInLb, 1);
  }

  public double inLb() {
    return windFactor * pushedInLb * groundRatio;
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("bent", Measure.inchPounds(inLb()))
            .with("factor", Measure.ratio(windFactor))
            .with("moment", Measure.inchPounds(pushedInLb))
            .with("groundRatio", Measure.ratio(groundRatio)));
  }
}
