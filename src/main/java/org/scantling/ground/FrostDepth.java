package org.scantling.ground;

import java.util.ArrayList;
import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Inches;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

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
 * @param neumann λ, how much the ground's own warmth holds the frost back, 0 to 1
 * @param stefanIn depth without that warmth, in
 * @param depthIn λ times the Stefan depth, in
 */
public record FrostDepth(
    FrostSoil soil,
    FrostWinter winter,
    double thermalRatio,
    double fusionFactor,
    NeumannFactor neumann,
    double stefanIn,
    double depthIn)
    implements Calculated {
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
    NeumannFactor neumann = NeumannFactor.of(thermalRatio, fusionFactor);
    double stefanIn = Inches.PER_FOOT * Math.sqrt(stefanFt2(soil, winter, latentBtu));
    double depthIn = neumann.lambdaFactor() * stefanIn;
    return new FrostDepth(soil, winter, thermalRatio, fusionFactor, neumann, stefanIn, depthIn);
  }

  private static double stefanFt2(FrostSoil soil, FrostWinter winter, double latentBtu) {
    return TWO_TIMES_HOURS_PER_DAY
        * soil.conductivityBtuPerHrFtF()
        * winter.surfaceIndexFDays()
        / latentBtu;
  }

  /** λ. */
  public double lambdaFactor() {
    return neumann.lambdaFactor();
  }

  @Override
  public List<FormulaLine> lines() {
    Measure density = new Measure(soil.dryUnitWeightPcf(), Unit.PCF);
    Measure water = Measure.ratio(soil.waterRatio());
    Measure latent = new Measure(soil.latentHeatBtuPerFt3(), Unit.BTU_PER_CUBIC_FOOT);
    Measure heat = new Measure(soil.volumetricHeatBtuPerFt3F(), Unit.BTU_PER_CUBIC_FOOT_F);
    Measure surface = Measure.ratio(winter.surfaceFactor());
    Measure index = new Measure(winter.freezingIndexFDays(), Unit.F_DAYS);
    Measure frost = new Measure(winter.surfaceFrostF(), Unit.DEGREE_F);
    List<FormulaLine> lines = new ArrayList<>();
    lines.add(FormulaLine.of("latent", latent).with("density", density).with("water", water));
    lines.add(FormulaLine.of("heat", heat).with("density", density).with("water", water));
    lines.add(
        FormulaLine.of("surface", frost)
            .with("surface", surface)
            .with("index", index)
            .with("days", Measure.count(winter.seasonDays())));
    lines.add(
        FormulaLine.of("thermal", Measure.ratio(thermalRatio))
            .with("warm", new Measure(winter.initialWarmthF(), Unit.DEGREE_F))
            .with("frost", frost));
    lines.add(
        FormulaLine.of("fusion", Measure.ratio(fusionFactor))
            .with("frost", frost)
            .with("heat", heat)
            .with("latent", latent));
    lines.addAll(neumann.lines());
    lines.add(
        FormulaLine.of("depth", Measure.feet(depthIn))
            .with("lambda", Measure.ratio(neumann.lambdaFactor()))
            .with("conductivity", conductivity())
            .with("surface", surface)
            .with("index", index)
            .with("latent", latent));
    return lines;
  }

  private Measure conductivity() {
    return new Measure(soil.conductivityBtuPerHrFtF(), Unit.BTU_PER_FOOT_HOUR_F);
  }
}
