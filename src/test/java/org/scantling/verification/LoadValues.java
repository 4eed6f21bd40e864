package org.scantling.verification;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.scantling.loads.ExposureConstants;
import org.scantling.loads.FlatRoofSnow;
import org.scantling.loads.FreestandingWallWind;
import org.scantling.loads.HeightFactor;
import org.scantling.loads.HillWind;
import org.scantling.loads.HourlyWind;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.LatticeWind;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.loads.SnowFactors;
import org.scantling.loads.SolidityBands;
import org.scantling.loads.SolidityBands.Band;
import org.scantling.loads.VelocityPressure;
import org.scantling.loads.WallRule;
import org.scantling.loads.WindFactors;
import org.scantling.loads.WindPanel;
import org.scantling.quantity.Unit;

/** Snow and wind. */
final class LoadValues {
  private static final double IN_PER_FT = 12;
  private static final double LOWEST_IN = 180;
  private static final double KZ_AT_GRADIENT = 2.01;
  private static final double IN2_PER_FT2 = 144;
  private static final double LOW_SLOPE_LIMIT_PSF = 20;
  private static final double LONE_POST_SOLIDITY = 0.05;

  /** ASCE 7-16 figure 29.4-2, flat-sided members, as quoted in a City of Everett WA permit file. */
  private static final SolidityBands FLAT_SIDED =
      new SolidityBands(List.of(new Band(0, 2.0), new Band(0.1, 1.8), new Band(0.3, 1.6)), 0.7);

  static final Map<String, ToDoubleFunction<PackRow>> QUANTITIES =
      Map.ofEntries(
          entry("flat-roof-snow-psf", row -> snow(row).flatRoofSnowPsf()),
          entry("low-slope-minimum-psf", row -> snow(row).lowSlopeMinimumPsf()),
          entry("velocity-pressure-psf", LoadValues::velocityPressurePsf),
          entry("kz", LoadValues::kz),
          entry("lattice-pressure-psf", row -> latticePsf(row, row.number("solidity"))),
          entry("hourly-wind-metres-per-second", LoadValues::hourlyMetresPerSecond),
          entry("opening-factor", row -> FreestandingWallWind.openingFactor(row.number("eps"))),
          entry("allowable-stress-speed-mph", LoadValues::allowableStressMph),
          entry("post-line-load-plf", LoadValues::postPlf),
          entry("post-line-load-asd-plf", row -> windFactor() * postPlf(row)),
          entry("solid-wall-force-lb", LoadValues::solidWallLb),
          entry("solid-wall-force-asd-lb", row -> windFactor() * solidWallLb(row)));

  private LoadValues() {}

  private static FlatRoofSnow snow(PackRow row) {
    return FlatRoofSnow.of(
        row.number("pg"),
        new SnowFactors(row.number("ce"), row.number("ct"), row.number("is")),
        LOW_SLOPE_LIMIT_PSF);
  }

  private static double velocityPressurePsf(PackRow row) {
    WindFactors factors = new WindFactors(HillWind.flat(1), row.number("kd"), 1);
    return VelocityPressure.of(row.number("v"), printed(row.number("kz")), factors).pressurePsf();
  }

  /** A factor as a table prints it: that of a wind that grows as the height. */
  private static HeightFactor printed(double kz) {
    return new ExposureConstants(2, KZ_AT_GRADIENT, Double.MIN_VALUE).at(kz);
  }

  private static double hourlyMetresPerSecond(PackRow row) {
    double psf = row.number("q") / Unit.PSF.toMetric(1);
    return Unit.MPH.toMetric(HourlyWind.ofPressure(psf).speedMph());
  }

  private static double kz(PackRow row) {
    return new ExposureConstants(row.number("alpha"), row.number("zg") * IN_PER_FT, LOWEST_IN)
        .at(row.number("z") * IN_PER_FT)
        .factor();
  }

  private static double latticePsf(PackRow row, double solidityRatio) {
    LatticeRule rule = new LatticeRule(FLAT_SIDED, row.number("g"), row.number("floor"));
    return LatticeWind.on(new WindPanel(solidityRatio * 1000, 1000), row.number("q"), rule)
        .pressurePsf();
  }

  /** Speeds of both levels press alike once the load factor is laid on, so they go by its root. */
  private static double allowableStressMph(PackRow row) {
    return row.number("v") * Math.sqrt(windFactor());
  }

  private static double postPlf(PackRow row) {
    return latticePsf(row, LONE_POST_SOLIDITY) * row.number("breadth") / IN_PER_FT;
  }

  private static double solidWallLb(PackRow row) {
    double areaIn2 = row.number("area") * IN2_PER_FT2;
    WallRule rule = new WallRule(row.number("cf"), row.number("g"), 0);
    return FreestandingWallWind.on(new WindPanel(areaIn2, areaIn2), row.number("q"), rule)
        .forceLb();
  }

  private static double windFactor() {
    return LoadCombination.DEAD_WIND.factor(LoadKind.WIND);
  }
}
