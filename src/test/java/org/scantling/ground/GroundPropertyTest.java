package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class GroundPropertyTest {
  private static final double SLACK = 1 - 1e-9;

  @Property
  void more_push_and_a_higher_push_go_deeper(
      @ForAll @DoubleRange(min = 1, max = 5000) double forceLb,
      @ForAll @DoubleRange(min = 0, max = 240) double heightIn,
      @ForAll @DoubleRange(min = 1, max = 3) double timesFactor) {
    double depthIn = depthIn(new LateralLoad(forceLb, heightIn), 12, 150);
    assertThat(depthIn(new LateralLoad(forceLb * timesFactor, heightIn), 12, 150))
        .isGreaterThanOrEqualTo(depthIn * SLACK);
    assertThat(depthIn(new LateralLoad(forceLb, heightIn * timesFactor), 12, 150))
        .isGreaterThanOrEqualTo(depthIn * SLACK);
  }

  @Property
  void firmer_soil_and_a_wider_post_go_shallower(
      @ForAll @DoubleRange(min = 1, max = 5000) double forceLb,
      @ForAll @DoubleRange(min = 3.5, max = 24) double widthIn,
      @ForAll @DoubleRange(min = 100, max = 400) double lateralPsfPerFt,
      @ForAll @DoubleRange(min = 1, max = 3) double timesFactor) {
    LateralLoad push = new LateralLoad(forceLb, 60);
    double depthIn = depthIn(push, widthIn, lateralPsfPerFt);
    assertThat(depthIn(push, widthIn * timesFactor, lateralPsfPerFt) * SLACK)
        .isLessThanOrEqualTo(depthIn);
    assertThat(depthIn(push, widthIn, lateralPsfPerFt * timesFactor) * SLACK)
        .isLessThanOrEqualTo(depthIn);
  }

  @Property
  void a_harder_winter_freezes_deeper_and_never_past_stefan(
      @ForAll @DoubleRange(min = 10, max = 5000) double indexFDays,
      @ForAll @DoubleRange(min = 1, max = 1000) double moreFDays,
      @ForAll @DoubleRange(min = 32, max = 60) double meanAnnualF) {
    FrostSoil silt = new FrostSoil(100, 0.15, 0.76);
    FrostDepth mild = FrostDepth.of(silt, new FrostWinter(indexFDays, 0.7, 100, meanAnnualF));
    FrostDepth hard =
        FrostDepth.of(silt, new FrostWinter(indexFDays + moreFDays, 0.7, 100, meanAnnualF));
    assertThat(hard.depthIn()).isGreaterThan(mild.depthIn());
    assertThat(mild.depthIn()).isLessThan(mild.stefanIn());
  }

  @Property
  void warmer_ground_freezes_less_deep(
      @ForAll @DoubleRange(min = 0, max = 10) double thermalRatio,
      @ForAll @DoubleRange(min = 0.01, max = 5) double moreRatio,
      @ForAll @DoubleRange(min = 0.01, max = 2) double fusionFactor) {
    assertThat(NeumannFactor.of(thermalRatio + moreRatio, fusionFactor).lambdaFactor())
        .isLessThan(NeumannFactor.of(thermalRatio, fusionFactor).lambdaFactor());
  }

  private static double depthIn(LateralLoad push, double widthIn, double lateralPsfPerFt) {
    return NonConstrainedEmbedment.of(
            push, EffectiveWidth.concreteCollar(widthIn), new LateralResistance(lateralPsfPerFt, 1))
        .depthIn();
  }
}
