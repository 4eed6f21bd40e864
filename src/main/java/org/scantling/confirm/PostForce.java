package org.scantling.confirm;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What presses a post at some height: what it carries, and its own weight above that height.
 *
 * @param carriedLb on its top
 * @param ownLbPerIn its own weight
 * @param aboveIn how much of it stands above
 */
public record PostForce(double carriedLb, double ownLbPerIn, double aboveIn) implements Calculated {

  /** A force that a frame was solved for. */
  static PostForce solved(double pressedLb) {
    return new PostForce(pressedLb, 0, 0);
  }

  public double lb() {
    return carriedLb + ownLbPerIn * aboveIn;
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("load", Measure.pounds(lb()))
            .with("reaction", Measure.pounds(carriedLb))
            .with("own", new Measure(ownLbPerIn, Unit.POUND_PER_INCH))
            .with("height", Measure.inches(aboveIn)));
  }
}
