package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * How hard wood presses back on a dowel-type fastener.
 *
 * @param alongPsi Fe along the grain
 * @param acrossPsi Fe across the grain, the same as along for thin fasteners
 */
public record DowelBearing(double alongPsi, double acrossPsi) {
  static final double THICK_DOWEL_IN = 0.25;
  private static final double TABLE_STEP_PSI = 50;

  public DowelBearing {
    Require.positive("dowel bearing along the grain", alongPsi, "psi");
    Require.positive("dowel bearing across the grain", acrossPsi, "psi");
  }

  /**
   * The dowel bearing strength of a wood, as the table prints it, to the nearest 50 psi.
   *
   * <p>Fasteners under 1/4 in press the same in any direction; thicker ones split the wood sooner
   * across the grain.
   *
   * @param specificGravityRatio G of the wood, above 0 and below 1.5
   * @param diameterIn nominal diameter of the fastener, above 0
   * @return Fe along and across the grain in psi
   *     <p>Source: NDS, 2018, Table 12.3.3. Worked: G 0.50 and a 1/2 in bolt gives 5600 and 3150
   *     psi, a 0.162 in nail 4650 psi.
   */
  public static DowelBearing of(double specificGravityRatio, double diameterIn) {
    Require.positive("specific gravity", specificGravityRatio, "");
    Require.below("specific gravity", specificGravityRatio, "", 1.5);
    Require.positive("fastener diameter", diameterIn, "in");
    if (diameterIn < THICK_DOWEL_IN) {
      double thinPsi = printed(16600 * Math.pow(specificGravityRatio, 1.84));
      return new DowelBearing(thinPsi, thinPsi);
    }
    double acrossPsi = 6100 * Math.pow(specificGravityRatio, 1.45) / Math.sqrt(diameterIn);
    return new DowelBearing(printed(11200 * specificGravityRatio), printed(acrossPsi));
  }

  /**
   * Fe at an angle to the grain, in psi.
   *
   * <p>Source: NDS, 2018, 12.3.4. Worked: 5600 and 3150 psi at 45 degrees gives 4032 psi.
   */
  public double atPsi(double angleDegrees) {
    return Hankinson.at(alongPsi, acrossPsi, angleDegrees);
  }

  private static double printed(double psi) {
    return Math.round(psi / TABLE_STEP_PSI) * TABLE_STEP_PSI;
  }
}
