package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class LoadsPropertyTest {

  @Property
  void a_faster_wind_presses_harder(
      @ForAll @DoubleRange(min = 1, max = 200) double windSpeedMph,
      @ForAll @DoubleRange(min = 0.01, max = 50) double moreMph,
      @ForAll @DoubleRange(min = 0, max = 1200) double heightIn) {
    HeightFactor kz = new ExposureConstants(7, 14400, 180).at(heightIn);
    WindFactors factors = new WindFactors(HillWind.flat(1), 0.85, 1);
    assertThat(VelocityPressure.of(windSpeedMph + moreMph, kz, factors).pressurePsf())
        .isGreaterThan(VelocityPressure.of(windSpeedMph, kz, factors).pressurePsf());
  }

  @Property
  void lattice_is_never_under_the_minimum_pressure(
      @ForAll @DoubleRange(min = 0, max = 80) double velocityPressurePsf,
      @ForAll @DoubleRange(min = 0.01, max = 0.7) double solidityRatio) {
    SolidityBands bands = new SolidityBands(List.of(new SolidityBands.Band(0, 1.6)), 0.71);
    LatticeWind wind =
        LatticeWind.on(
            new WindPanel(solidityRatio, 1), velocityPressurePsf, new LatticeRule(bands, 0.85, 16));
    assertThat(wind.pressurePsf()).isGreaterThanOrEqualTo(16);
  }

  @Property
  void every_snow_pattern_has_a_factor_for_each_span_and_a_full_one(
      @ForAll @IntRange(min = 1, max = 20) int spanCount) {
    assertThat(SnowPattern.forSpans(spanCount))
        .doesNotHaveDuplicates()
        .allSatisfy(pattern -> assertThat(pattern.spanFactors()).hasSize(spanCount).contains(1.0));
  }
}
