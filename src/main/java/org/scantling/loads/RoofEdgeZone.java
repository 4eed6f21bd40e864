package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * How hard the wind sucks at a part of a roof without walls where it sucks hardest: at the edge,
 * and harder still at a corner, the more so the smaller the part.
 *
 * @param widthIn width a of the zone along the edge, in, above zero
 * @param bands net pressure coefficients upward by the area of the part, from the smallest up
 *     <p>Source: ASCE 7, 2016, section 30.8 and figure 30.8-1
 */
public record RoofEdgeZone(double widthIn, List<Band> bands) {
  /**
   * @param upToRatio largest area of the band, over a squared, included
   * @param cornerFactor C_N upward in the corner, a by a
   * @param edgeFactor C_N upward along the edge
   */
  public record Band(double upToRatio, double cornerFactor, double edgeFactor) {
    public Band {
      Require.zeroOrMore("corner coefficient", cornerFactor, "");
      Require.zeroOrMore("edge coefficient", edgeFactor, "");
    }
  }

  /**
   * A part that starts at the corner of the roof.
   *
   * @param zone edge and corner
   * @param areaIn2 its effective wind area, sq in
   * @param reachIn how far it reaches in from the corner, in
   * @param band coefficients of a part of that area
   * @param cornerIn what of its reach lies in the corner, in
   * @param meanFactor C_N upward, the corner's over that, the edge's over the rest
   */
  public record Part(
      RoofEdgeZone zone,
      double areaIn2,
      double reachIn,
      Band band,
      double cornerIn,
      double meanFactor)
      implements Calculated {
    @Override
    public List<FormulaLine> lines() {
      return List.of(
          FormulaLine.of("coefficient", Measure.ratio(meanFactor))
              .with("corner-factor", Measure.ratio(band.cornerFactor()))
              .with("edge-factor", Measure.ratio(band.edgeFactor()))
              .with("inside", Measure.inches(cornerIn))
              .with("reach", Measure.inches(reachIn)));
    }
  }

  /**
   * @param ofWidthRatio share of the least width of the roof
   * @param ofHeightRatio share of its height
   * @param leastIn least width of the zone, in
   */
  public record WidthRule(double ofWidthRatio, double ofHeightRatio, double leastIn) {}

  public RoofEdgeZone {
    Require.positive("width of the edge zone", widthIn, "in");
    bands = List.copyOf(bands);
    if (bands.isEmpty()) {
      throw new IllegalArgumentException("a roof edge has 0 bands and must have at least 1");
    }
  }

  /**
   * Finds how wide the zone along the edge is.
   *
   * @param roofWidthIn least horizontal size of the roof, in
   * @param heightIn mean height of the roof, in
   * @param rule shares and least width
   * @return a, in
   *     <p>Source: ASCE 7, 2016, figure 30.8-1, note 6
   *     <p>Worked number: 8 ft wide and 8 ft high: 0.8 ft and 3.2 ft, but not under 3 ft, so 36 in.
   */
  public static double widthIn(double roofWidthIn, double heightIn, WidthRule rule) {
    double smallerIn = Math.min(rule.ofWidthRatio() * roofWidthIn, rule.ofHeightRatio() * heightIn);
    return Math.max(smallerIn, rule.leastIn());
  }

  /**
   * Finds the mean coefficient over a part that starts at the corner of the roof.
   *
   * @param areaIn2 effective wind area of the part, sq in, above zero
   * @param reachIn how far the part reaches in from the corner, in, above zero
   * @return it with C_N upward, the corner's over a, the edge's over the rest
   *     <p>Source: ASCE 7, 2016, figure 30.8-1
   *     <p>Worked number: clear flow, a 36 in; a crossbeam of 60 in span, 60²/3 = 1200 sq in, has
   *     3.3 over 36 of the 45 in that hang on one joint and 1.7 over 9: 2.98.
   */
  public Part part(double areaIn2, double reachIn) {
    Band band = band(areaIn2);
    double cornerIn = Math.min(widthIn, Require.positive("reach", reachIn, "in"));
    double meanFactor =
        (band.cornerFactor() * cornerIn + band.edgeFactor() * (reachIn - cornerIn)) / reachIn;
    return new Part(this, areaIn2, reachIn, band, cornerIn, meanFactor);
  }

  private Band band(double areaIn2) {
    double share = Require.positive("effective wind area", areaIn2, "in²") / (widthIn * widthIn);
    return bands.stream()
        .filter(band -> share <= band.upToRatio())
        .findFirst()
        .orElse(bands.get(bands.size() - 1));
  }
}
