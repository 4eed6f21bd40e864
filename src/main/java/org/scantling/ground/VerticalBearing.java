package org.scantling.ground;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * Whether the soil under a footing bears the post.
 *
 * @param loadLb P, what stands on the footing, allowable-stress level, lb, zero or more
 * @param areaIn2 area that presses on the soil, sq in, above zero
 * @param allowablePsf pressure the soil is trusted with, psf, above zero
 * @param ownPsf what the footing itself presses with, psf, zero or more
 * @param pressurePsf P over the area, and the footing, psf
 * @param neededDiameterIn least diameter of a round footing for this load, in; endless where the
 *     footing itself is too heavy
 */
public record VerticalBearing(
    double loadLb,
    double areaIn2,
    double allowablePsf,
    double ownPsf,
    double pressurePsf,
    double neededDiameterIn)
    implements Calculated {
  public VerticalBearing {
    Require.zeroOrMore("vertical load", loadLb, "lb");
    Require.positive("bearing area", areaIn2, "in²");
    Require.positive("soil bearing", allowablePsf, "psf");
    Require.zeroOrMore("pressure of the footing itself", ownPsf, "psf");
  }

  /**
   * Finds the pressure under a footing and the diameter it needs.
   *
   * @param loadLb P, lb, zero or more
   * @param areaIn2 area on the soil, sq in, above zero; see {@link #circleIn2}
   * @param allowablePsf presumptive pressure, psf, above zero
   * @return pressure and needed diameter
   * @throws IllegalArgumentException if the load is negative, or area or pressure not above zero
   *     <p>Source: IBC, 2018, section 1806.2
   *     <p>Worked number: 1000 lb on a 12 in round footing press 1273 psf; 2000 psf soil needs 9.57
   *     in.
   */
  public static VerticalBearing of(double loadLb, double areaIn2, double allowablePsf) {
    return of(loadLb, areaIn2, allowablePsf, 0);
  }

  /**
   * The same under a footing that presses by itself.
   *
   * @param ownPsf what the footing itself presses with, psf, zero or more
   *     <p>Worked number: 407.96 lb on an 18 in hole filled with concrete that presses 125 psf more
   *     than the soil press 355.86 psf.
   */
  public static VerticalBearing of(
      double loadLb, double areaIn2, double allowablePsf, double ownPsf) {
    double leftPsf = Math.max(0, allowablePsf - ownPsf);
    double neededIn2 = loadLb > 0 ? loadLb / leftPsf * Inches.SQUARE_PER_SQUARE_FOOT : 0;
    return new VerticalBearing(
        loadLb,
        areaIn2,
        allowablePsf,
        ownPsf,
        loadLb / areaIn2 * Inches.SQUARE_PER_SQUARE_FOOT + ownPsf,
        Math.sqrt(4 * neededIn2 / Math.PI));
  }

  /** Area of a round footing of this diameter (in), sq in. */
  public static double circleIn2(double diameterIn) {
    Require.zeroOrMore("diameter", diameterIn, "in");
    return Math.PI * diameterIn * diameterIn / 4;
  }

  @Override
  public List<FormulaLine> lines() {
    FormulaLine line =
        FormulaLine.of("pressure", Measure.psf(pressurePsf))
            .with("load", Measure.pounds(loadLb))
            .with("area", Measure.squareFeet(areaIn2))
            .with("soil-pressure", Measure.psf(allowablePsf));
    return List.of(ownPsf > 0 ? line.with("own", Measure.psf(ownPsf)) : line);
  }

  /** Pressure against what the soil is trusted with. */
  public Check check() {
    return new Check(pressurePsf, allowablePsf);
  }
}
