package org.scantling.ground;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;
import org.scantling.quantity.Unit;

/**
 * Grip of tamped fill on the four faces of a straight post: it grows with the weight of soil above
 * each inch of depth.
 *
 * @param gripRatio grip over the weight of the soil beside it
 * @param soilPcf unit weight of the soil, pcf
 * @param depthIn depth of the post in it, in
 * @param breadthIn of the square post, in
 * @param gripLb lb
 */
public record PostGrip(
    double gripRatio, double soilPcf, double depthIn, double breadthIn, double gripLb)
    implements Calculated {
  public PostGrip {
    Require.zeroOrMore("grip of the fill", gripRatio, "");
    Require.zeroOrMore("unit weight of soil", soilPcf, "pcf");
    Require.zeroOrMore("embedment", depthIn, "in");
    Require.zeroOrMore("post breadth", breadthIn, "in");
  }

  /**
   * Finds the grip.
   *
   * @param gripRatio grip over the weight of the soil beside it
   * @param soilPcf unit weight of the soil, pcf
   * @param depthIn depth of the post in it, in
   * @param breadthIn of the square post, in
   * @return i W_s d/2 × 4 b d, lb
   *     <p>Source: statics; how hard fill grips is common practice
   *     <p>Worked number: 0.15 of 100 pcf on a 4x4 30 in deep is 54.69 lb.
   */
  public static PostGrip of(double gripRatio, double soilPcf, double depthIn, double breadthIn) {
    double meanPcfIn = gripRatio * soilPcf * depthIn / 2;
    double facesIn2 = 4 * breadthIn * depthIn;
    return new PostGrip(
        gripRatio, soilPcf, depthIn, breadthIn, meanPcfIn * facesIn2 / Inches.CUBIC_PER_CUBIC_FOOT);
  }

  @Override
  public List<FormulaLine> lines() {
    return List.of(
        FormulaLine.of("grip", Measure.pounds(gripLb))
            .with("grip", Measure.ratio(gripRatio))
            .with("soil-weight", new Measure(soilPcf, Unit.PCF))
            .with("depth", Measure.feet(depthIn))
            .with("breadth", Measure.feet(breadthIn)));
  }
}
