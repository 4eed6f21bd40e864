package org.scantling.loads;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Wind on climbing plants, in leaf and bare.
 *
 * @param areaIn2 area on which the plants grow, square to the wind, sq in
 * @param velocityPressurePsf q, psf
 * @param inLeaf fill and drag in leaf
 * @param bare fill and drag without leaves
 * @param inLeafLb force in leaf, lb
 * @param bareLb force without leaves, lb
 */
public record FoliageWind(
    double areaIn2,
    double velocityPressurePsf,
    FoliageCover inLeaf,
    FoliageCover bare,
    double inLeafLb,
    double bareLb)
    implements Calculated {

  public FoliageWind {
    Require.zeroOrMore("foliage area", areaIn2, "in²");
    Require.zeroOrMore("force in leaf", inLeafLb, "lb");
    Require.zeroOrMore("force without leaves", bareLb, "lb");
  }

  /**
   * Finds the wind force on the plants of one side.
   *
   * @param areaIn2 area on which the plants grow, openings between timbers only, sq in
   * @param velocityPressurePsf q_z at the middle of the area, psf, zero or more
   * @param inLeaf fill and drag in leaf
   * @param bare fill and drag without leaves
   * @return both forces = area × fill × drag × q, lb, at the level of the velocity pressure
   *     <p>Source: common practice; no standard gives a drag coefficient for climbers
   *     <p>Worked number: 10 sq ft, q 16 psf, fill 0.8, drag 0.5 give 64 lb in leaf.
   */
  public static FoliageWind on(
      double areaIn2, double velocityPressurePsf, FoliageCover inLeaf, FoliageCover bare) {
    Require.zeroOrMore("velocity pressure", velocityPressurePsf, "psf");
    double freeStreamLb = areaIn2 / Inches.SQUARE_PER_SQUARE_FOOT * velocityPressurePsf;
    return new FoliageWind(
        areaIn2,
        velocityPressurePsf,
        inLeaf,
        bare,
        freeStreamLb * inLeaf.fillRatio() * inLeaf.dragFactor(),
        freeStreamLb * bare.fillRatio() * bare.dragFactor());
  }

  /** The larger of the two forces, lb. */
  public double worstLb() {
    return Math.max(inLeafLb, bareLb);
  }

  /** True where leaves take as much as bare stems, or more. */
  public boolean worstInLeaf() {
    return inLeafLb >= bareLb;
  }

  @Override
  public List<FormulaLine> lines() {
    FoliageCover worst = worstInLeaf() ? inLeaf : bare;
    return List.of(
        FormulaLine.of("leaves", Measure.pounds(worstLb()))
            .with("pressure", Measure.psf(velocityPressurePsf))
            .with("fill", Measure.ratio(worst.fillRatio()))
            .with("drag", Measure.ratio(worst.dragFactor()))
            .with("open", Measure.squareFeet(areaIn2)));
  }
}
