package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class LoadsPropertyTest {
  private static final FlatRoofSnow ROOF = FlatRoofSnow.of(30, new SnowFactors(1, 1.2, 0.8));

  @Property
  void more_leaves_never_lower_the_snow_share(
      @ForAll @DoubleRange(min = 1.5, max = 48) double spacingIn,
      @ForAll @DoubleRange(min = 0, max = 1) double fillRatio,
      @ForAll @DoubleRange(min = 0, max = 1) double otherFillRatio,
      @ForAll @DoubleRange(min = 0, max = 1) double minimumRatio) {
    SnowShareRule rule = new SnowShareRule(minimumRatio, 6, false);
    double low = Math.min(fillRatio, otherFillRatio);
    double high = Math.max(fillRatio, otherFillRatio);
    assertThat(OpenTopSnow.on(ROOF, new OpenTop(1.5, spacingIn, high), rule).shareRatio())
        .isGreaterThanOrEqualTo(
            OpenTopSnow.on(ROOF, new OpenTop(1.5, spacingIn, low), rule).shareRatio() - 1e-12);
  }

  @Property
  void wider_spacing_never_raises_the_snow_share_and_the_minimum_always_holds(
      @ForAll @DoubleRange(min = 1.5, max = 48) double spacingIn,
      @ForAll @DoubleRange(min = 0, max = 48) double moreIn,
      @ForAll @DoubleRange(min = 0, max = 1) double fillRatio) {
    SnowShareRule rule = new SnowShareRule(0.3, 6, false);
    double wideShare =
        OpenTopSnow.on(ROOF, new OpenTop(1.5, spacingIn + moreIn, fillRatio), rule).shareRatio();
    assertThat(wideShare)
        .isBetween(
            0.3,
            OpenTopSnow.on(ROOF, new OpenTop(1.5, spacingIn, fillRatio), rule).shareRatio()
                + 1e-12);
  }

  @Property
  void a_faster_wind_presses_harder(
      @ForAll @DoubleRange(min = 1, max = 200) double windSpeedMph,
      @ForAll @DoubleRange(min = 0.01, max = 50) double moreMph,
      @ForAll @DoubleRange(min = 0, max = 1200) double heightIn) {
    double kz = new ExposureConstants(7, 14400).kzFactor(heightIn);
    WindFactors factors = new WindFactors(1, 0.85, 1);
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

  @Property
  void leaving_vines_out_never_makes_a_combination_better(
      @ForAll @DoubleRange(min = -1000, max = 1000) double deadEffect,
      @ForAll @DoubleRange(min = -1000, max = 1000) double vineEffect,
      @ForAll @DoubleRange(min = -1000, max = 1000) double windEffect,
      @ForAll LoadCombination combination) {
    LoadEffects effects = new LoadEffects(deadEffect, vineEffect, 0, 0, windEffect);
    LoadEffects bare = new LoadEffects(deadEffect, 0, 0, 0, windEffect);
    assertThat(effects.highest(combination).effect())
        .isGreaterThanOrEqualTo(bare.worst(combination).effect());
    assertThat(effects.lowest(combination).effect())
        .isLessThanOrEqualTo(bare.worst(combination).effect());
    assertThat(Math.abs(effects.worst(combination).effect()))
        .isGreaterThanOrEqualTo(Math.abs(bare.worst(combination).effect()));
  }
}
