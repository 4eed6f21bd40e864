package org.scantling.verification;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.AggregateWith;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.scantling.loads.ExposureConstants;
import org.scantling.loads.FlatRoofSnow;
import org.scantling.loads.FreestandingWallWind;
import org.scantling.loads.LatticeRule;
import org.scantling.loads.LatticeWind;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.loads.SnowFactors;
import org.scantling.loads.SolidityBands;
import org.scantling.loads.SolidityBands.Band;
import org.scantling.loads.TributaryLoad;
import org.scantling.loads.VelocityPressure;
import org.scantling.loads.WallRule;
import org.scantling.loads.WindFactors;
import org.scantling.loads.WindPanel;
import org.scantling.loads.WindSpeedLimits;
import org.scantling.loads.WindSpeedReading;

class LoadsWorkedValuesTest {
  private static final double IN_PER_FT = 12;
  private static final double IN2_PER_FT2 = 144;

  /** ASCE 7-16 figure 29.4-2, flat-sided members, as quoted in a City of Everett WA permit file. */
  private static final SolidityBands FLAT_SIDED =
      new SolidityBands(List.of(new Band(0, 2.0), new Band(0.1, 1.8), new Band(0.3, 1.6)), 0.7);

  private static final Map<String, ToDoubleFunction<LoadsGroundRow>> KERNELS =
      Map.ofEntries(
          Map.entry("flat-roof-snow-psf", row -> snow(row).flatRoofSnowPsf()),
          Map.entry("low-slope-minimum-psf", row -> snow(row).lowSlopeMinimumPsf()),
          Map.entry("velocity-pressure-psf", LoadsWorkedValuesTest::velocityPressurePsf),
          Map.entry("kz", LoadsWorkedValuesTest::kz),
          Map.entry("lattice-pressure-psf", row -> latticePsf(row, row.given("solidity"))),
          Map.entry("opening-factor", row -> FreestandingWallWind.openingFactor(row.given("eps"))),
          Map.entry("allowable-stress-speed-mph", LoadsWorkedValuesTest::allowableStressMph),
          Map.entry("post-line-load-plf", LoadsWorkedValuesTest::postPlf),
          Map.entry("post-line-load-asd-plf", row -> windFactor() * postPlf(row)),
          Map.entry("solid-wall-force-lb", LoadsWorkedValuesTest::solidWallLb),
          Map.entry("solid-wall-force-asd-lb", row -> windFactor() * solidWallLb(row)));

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      resources = {"/verification/loads-worked.csv", "/verification/loads-velocity-pressure.csv"},
      numLinesToSkip = 1)
  void a_worked_value_is_met(@AggregateWith(LoadsGroundRow.Reader.class) LoadsGroundRow row) {
    row.check(KERNELS);
  }

  private static FlatRoofSnow snow(LoadsGroundRow row) {
    return FlatRoofSnow.of(
        row.given("pg"), new SnowFactors(row.given("ce"), row.given("ct"), row.given("is")));
  }

  private static double velocityPressurePsf(LoadsGroundRow row) {
    WindFactors factors = new WindFactors(1, row.given("kd"), 1);
    return VelocityPressure.of(row.given("v"), row.given("kz"), factors).pressurePsf();
  }

  private static double kz(LoadsGroundRow row) {
    return new ExposureConstants(row.given("alpha"), row.given("zg") * IN_PER_FT)
        .kzFactor(row.given("z") * IN_PER_FT);
  }

  private static double latticePsf(LoadsGroundRow row, double solidityRatio) {
    LatticeRule rule = new LatticeRule(FLAT_SIDED, row.given("g"), row.given("floor"));
    return LatticeWind.on(new WindPanel(solidityRatio * 1000, 1000), row.given("q"), rule)
        .pressurePsf();
  }

  private static double allowableStressMph(LoadsGroundRow row) {
    return WindSpeedReading.of(row.given("v"), new WindSpeedLimits(60, 95, 220))
        .asAllowableStressMph();
  }

  private static double postPlf(LoadsGroundRow row) {
    double lonePostSolidity = 0.05;
    return IN_PER_FT
        * TributaryLoad.of(latticePsf(row, lonePostSolidity), row.given("breadth")).loadLbPerIn();
  }

  private static double solidWallLb(LoadsGroundRow row) {
    double areaIn2 = row.given("area") * IN2_PER_FT2;
    WallRule rule = new WallRule(row.given("cf"), row.given("g"), 0);
    return FreestandingWallWind.on(new WindPanel(areaIn2, areaIn2), row.given("q"), rule).forceLb();
  }

  private static double windFactor() {
    return LoadCombination.DEAD_WIND.factor(LoadKind.WIND);
  }
}
