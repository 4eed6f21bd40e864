package org.scantling.ground;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What the concrete around or under the foot of a post weighs.
 *
 * @param footing where it is
 * @param concretePcf unit weight, pcf
 * @param weightLb lb
 */
public record ConcreteWeight(BuriedFooting footing, double concretePcf, double weightLb)
    implements Calculated {
  /**
   * Finds the weight.
   *
   * @param footing where it is
   * @param concretePcf unit weight, pcf
   * @return volume times unit weight, lb
   *     <p>Source: arithmetic, no standard needed
   *     <p>Worked number: a 12 in collar 36 in deep around a 4x4 at 150 pcf weighs 315 lb.
   */
  public static ConcreteWeight of(BuriedFooting footing, double concretePcf) {
    double weightLb = footing.concreteIn3() * concretePcf / Inches.CUBIC_PER_CUBIC_FOOT;
    return new ConcreteWeight(footing, concretePcf, weightLb);
  }

  /** As it is worked where it fills the hole. */
  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("concrete", Measure.pounds(weightLb))
            .with("hole", Measure.feet(footing.collarDiameterIn()))
            .with("breadth", Measure.feet(footing.postBreadthIn()))
            .with("depth", Measure.feet(footing.embedmentIn()))
            .with("concrete-weight", new Measure(concretePcf, Unit.PCF)));
  }
}
