package org.scantling.ground;

import org.scantling.quantity.Inches;

/**
 * How deep the ground freezes in a design winter, an estimate.
 *
 * <p>The building department's frost depth wins over it; this one shows how soil, snow and turf
 * change the depth.
 *
 * @param soil the soil
 * @param winter the winter
 * @param thermalRatio α = v_0 / v_s
 * @param fusionFactor μ = v_s C / L
 * @param lambdaFactor λ, how much the ground's own warmth holds the frost back, 0 to 1
 * @param stefanIn depth without that warmth, in
 * @param depthIn λ times the Stefan depth, in
 */
public record FrostDepth(
    FrostSoil soil,
    FrostWinter winter,
    double thermalRatio,
    double fusionFactor,
    double lambdaFactor,
    double stefanIn,
    double depthIn) {
  private static final double TWO_TIMES_HOURS_PER_DAY = 48;

  /**
   * Finds the frost depth by the modified Berggren equation.
   *
   * @param soil the soil
   * @param winter the winter
   * @return X = λ √(48 k n FI / L), with the Stefan depth, α, μ and λ
   *     <p>Source: TM 5-852-6, 1988, chapter 3
   *     <p>Worked number: silt of 100 pcf at 15 %, k 0.76, index 1000 on bare soil (n 0.7) for 100
   *     days at 47 °F freezes 2.517 ft (30.2 in).
   */
  public static FrostDepth of(FrostSoil soil, FrostWinter winter) {
    double latentBtu = soil.latentHeatBtuPerFt3();
    double thermalRatio = winter.initialWarmthF() / winter.surfaceFrostF();
    double fusionFactor = winter.surfaceFrostF() * soil.volumetricHeatBtuPerFt3F() / latentBtu;
    double lambdaFactor = NeumannFactor.lambda(thermalRatio, fusionFactor);
    double stefanIn = Inches.PER_FOOT * Math.sqrt(stefanFt2(soil, winter, latentBtu));
    return new FrostDepth(
        soil, winter, thermalRatio, fusionFactor, lambdaFactor, stefanIn, lambdaFactor * stefanIn);
  }

  private static double stefanFt2(FrostSoil soil, FrostWinter winter, double latentBtu) {
    return TWO_TIMES_HOURS_PER_DAY
        * soil.conductivityBtuPerHrFtF()
        * winter.surfaceIndexFDays()
        / latentBtu;
  }
}
