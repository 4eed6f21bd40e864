package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;
import org.scantling.quantity.Unit;

/**
 * Own weight of a timber.
 *
 * @param breadthIn dressed breadth, in, above zero
 * @param depthIn dressed depth, in, above zero
 * @param unitWeightPcf weight of the wet, treated wood, pcf, above zero
 * @param weightLbPerIn weight of each inch of length, lb/in
 */
public record MemberWeight(
    double breadthIn, double depthIn, double unitWeightPcf, double weightLbPerIn)
    implements Calculated {

  public MemberWeight {
    Require.positive("breadth", breadthIn, "in");
    Require.positive("depth", depthIn, "in");
    Require.positive("unit weight", unitWeightPcf, "pcf");
  }

  /**
   * Finds the weight of a timber per inch.
   *
   * @param breadthIn dressed breadth, in, above zero
   * @param depthIn dressed depth, in, above zero
   * @param unitWeightPcf unit weight, pcf, above zero
   * @return cross section times unit weight, lb/in
   *     <p>Source: arithmetic, no standard needed
   *     <p>Worked number: a 4x4 (3.5 in square) at 45 pcf weighs 0.319 lb an inch, 30.6 lb in 8 ft.
   */
  public static MemberWeight of(double breadthIn, double depthIn, double unitWeightPcf) {
    return new MemberWeight(
        breadthIn,
        depthIn,
        unitWeightPcf,
        breadthIn * depthIn * unitWeightPcf / Inches.CUBIC_PER_CUBIC_FOOT);
  }

  /** Weight of a piece of this length (in), lb. */
  public double weightLb(double lengthIn) {
    return weightLbPerIn * Require.zeroOrMore("length", lengthIn, "in");
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("own", new Measure(weightLbPerIn, Unit.POUND_PER_INCH))
            .with("weight", new Measure(unitWeightPcf, Unit.PCF))
            .with("breadth", Measure.inches(breadthIn))
            .with("depth", Measure.inches(depthIn)));
  }
}
