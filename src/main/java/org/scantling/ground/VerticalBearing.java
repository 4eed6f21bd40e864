package org.scantling.ground;

import org.scantling.quantity.Check;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Require;

/**
 * Whether the soil under a footing bears the post.
 *
 * @param loadLb P, allowable-stress level, lb, zero or more
 * @param areaIn2 area that presses on the soil, sq in, above zero
 * @param allowablePsf pressure the soil is trusted with, psf, above zero
 * @param pressurePsf P over the area, psf
 * @param neededDiameterIn least diameter of a round footing for this load, in
 */
public record VerticalBearing(
    double loadLb,
    double areaIn2,
    double allowablePsf,
    double pressurePsf,
    double neededDiameterIn) {
  public VerticalBearing {
    Require.zeroOrMore("vertical load", loadLb, "lb");
    Require.positive("bearing area", areaIn2, "in²");
    Require.positive("soil bearing", allowablePsf, "psf");
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
    double neededIn2 = loadLb / allowablePsf * Inches.SQUARE_PER_SQUARE_FOOT;
    return new VerticalBearing(
        loadLb,
        areaIn2,
        allowablePsf,
        loadLb / areaIn2 * Inches.SQUARE_PER_SQUARE_FOOT,
        Math.sqrt(4 * neededIn2 / Math.PI));
  }

  /** Area of a round footing of this diameter (in), sq in. */
  public static double circleIn2(double diameterIn) {
    Require.zeroOrMore("diameter", diameterIn, "in");
    return Math.PI * diameterIn * diameterIn / 4;
  }

  /** Pressure against what the soil is trusted with. */
  public Check check() {
    return new Check(pressurePsf, allowablePsf);
  }
}
