package org.scantling.ground;

import org.scantling.quantity.Require;

/**
 * Soil as frost sees it.
 *
 * @param dryUnitWeightPcf dry unit weight γ_d, pcf, above zero
 * @param waterRatio water by dry weight, above zero (0.15 is 15 %)
 * @param conductivityBtuPerHrFtF conductivity k, mean of frozen and thawed, Btu/(hr ft °F), above
 *     zero
 */
public record FrostSoil(
    double dryUnitWeightPcf, double waterRatio, double conductivityBtuPerHrFtF) {
  private static final double FUSION_BTU_PER_LB = 144;
  private static final double SOIL_HEAT_BTU_PER_LB_F = 0.17;
  private static final double WATER_HEAT_BTU_PER_LB_F = 0.75;

  public FrostSoil {
    Require.positive("dry unit weight", dryUnitWeightPcf, "pcf");
    Require.positive("water content", waterRatio, "");
    Require.positive("conductivity", conductivityBtuPerHrFtF, "Btu/(hr ft °F)");
  }

  /**
   * Heat given up when the soil's water freezes.
   *
   * @return L = 144 γ_d w, Btu/cu ft
   *     <p>Source: TM 5-852-6, 1988, chapter 2
   *     <p>Worked number: 100 pcf at 15 % gives 2160 Btu/cu ft.
   */
  public double latentHeatBtuPerFt3() {
    return FUSION_BTU_PER_LB * dryUnitWeightPcf * waterRatio;
  }

  /**
   * Heat that a degree of cooling takes out, mean of frozen and thawed.
   *
   * @return C = γ_d (0.17 + 0.75 w), Btu/(cu ft °F); other manuals take 0.2 for the dry soil
   *     <p>Source: TM 5-852-6, 1988, chapter 2
   *     <p>Worked number: 100 pcf at 15 % gives 28.25 Btu/(cu ft °F).
   */
  public double volumetricHeatBtuPerFt3F() {
    return dryUnitWeightPcf * (SOIL_HEAT_BTU_PER_LB_F + WATER_HEAT_BTU_PER_LB_F * waterRatio);
  }
}
