package org.scantling.ground;

import org.scantling.quantity.Check;

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
    Argument.zeroOrMore("vertical load (lb)", loadLb);
    Argument.positive("bearing area (sq in)", areaIn2);
    Argument.positive("soil bearing (psf)", allowablePsf);
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
    double neededIn2 = loadLb / allowablePsf * FtIn.SQ_IN_PER_SQ_FT;
    return new VerticalBearing(
        loadLb,
        areaIn2,
        allowablePsf,
        loadLb / areaIn2 * FtIn.SQ_IN_PER_SQ_FT,
        Math.sqrt(4 * neededIn2 / Math.PI));
  }

  /** Area of a round footing of this diameter (in), sq in. */
  public static double circleIn2(double diameterIn) {
    Argument.zeroOrMore("diameter (in)", diameterIn);
    return Math.PI * diameterIn * diameterIn / 4;
  }

  /** Pressure against what the soil is trusted with. */
  public Check check() {
    return new Check(pressurePsf, allowablePsf);
  }
}
