package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * Weight of a post above ground; of none where it is counted elsewhere.
 *
 * @param ownLbPerIn by the inch
 * @param heightIn ground to top
 * @param weightLb all of it
 */
record PostWeight(double ownLbPerIn, double heightIn, double weightLb) implements Calculated {
  static final PostWeight NONE = new PostWeight(0, 0, 0);

  static PostWeight of(Material post, double heightIn) {
    double ownLbPerIn = post.weightLbPerIn();
    return new PostWeight(ownLbPerIn, heightIn, ownLbPerIn * heightIn);
  }

  @Override
  public List<FormulaLine> lines() {
    return weightLb > 0
        ? List.of(
            FormulaLine.of("post-weight", Measure.pounds(weightLb))
                .with("own", new Measure(ownLbPerIn, Unit.POUND_PER_INCH))
                .with("height", Measure.inches(heightIn)))
        : List.of();
  }
}
