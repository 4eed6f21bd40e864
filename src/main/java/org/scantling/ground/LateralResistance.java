package org.scantling.ground;

import org.scantling.quantity.Inches;
import org.scantling.quantity.Require;

/**
 * How the soil pushes back sideways.
 *
 * @param lateralPsfPerFt tabulated sideways pressure for each foot of depth, psf/ft, above zero
 * @param increaseFactor 1 for the tabulated value, 2 for isolated posts that half an inch of
 *     movement at the ground does not hurt; above zero
 *     <p>Source: IBC, 2018, sections 1806.2 and 1806.3.4
 */
public record LateralResistance(double lateralPsfPerFt, double increaseFactor) {
  private static final double DOUBLED = 2;
  private static final double DEEPEST_COUNTED_FT = 12;

  public LateralResistance {
    Require.positive("soil lateral bearing", lateralPsfPerFt, "psf/ft");
    Require.positive("lateral bearing increase", increaseFactor, "");
  }

  /** The tabulated value as it stands. */
  public static LateralResistance tabulated(PresumptiveSoil soil) {
    return new LateralResistance(soil.lateralPsfPerFt(), 1);
  }

  /** Twice the tabulated value, for isolated posts that may move half an inch at the ground. */
  public static LateralResistance doubled(PresumptiveSoil soil) {
    return new LateralResistance(soil.lateralPsfPerFt(), DOUBLED);
  }

  /** The pressure of {@link #at} alone. */
  public double pressurePsf(double embedmentIn, double shareRatio) {
    return at(embedmentIn, shareRatio).pressurePsf();
  }

  /**
   * Finds the sideways pressure allowed at a share of the embedment.
   *
   * @param embedmentIn d, in, zero or more; no more than 12 ft of it counts
   * @param shareRatio 1/3 for S1, 1 for S3
   * @return it with what of the embedment counts
   * @throws IllegalArgumentException if the embedment is negative or the share outside 0 to 1
   *     <p>Source: IBC, 2018, sections 1806.3.3 and 1807.3.2
   *     <p>Worked number: 100 psf/ft and 10 ft of embedment give 333 psf at a third of the depth.
   */
  public SoilPressure at(double embedmentIn, double shareRatio) {
    Require.zeroOrMore("embedment", embedmentIn, "in");
    Require.share("share of the embedment", shareRatio);
    double countedFt = Math.min(embedmentIn / Inches.PER_FOOT, DEEPEST_COUNTED_FT);
    double pressurePsf = lateralPsfPerFt * increaseFactor * countedFt * shareRatio;
    return new SoilPressure(this, countedFt, shareRatio, pressurePsf);
  }
}
