package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EmbedmentTest {
  private static final LateralResistance SAND = new LateralResistance(150, 1);
  private static final EffectiveWidth FOOT = EffectiveWidth.concreteCollar(12);

  @Test
  void the_depth_satisfies_the_formula_with_its_own_s1() {
    NonConstrainedEmbedment found =
        NonConstrainedEmbedment.of(new LateralLoad(150, 60), FOOT, SAND);
    assertThat(found.depthIn()).isCloseTo(48.7, within(0.05));
    assertThat(found.s1Psf()).isCloseTo(SAND.pressurePsf(found.depthIn(), 1.0 / 3), within(1e-6));
    assertThat(found.aIn()).isCloseTo(2.34 * 150 / found.s1Psf() * 12, within(1e-9));
    assertThat(found.depthIn())
        .isCloseTo(0.5 * found.aIn() * (1 + Math.sqrt(1 + 4.36 * 60 / found.aIn())), within(1e-9));
    assertThat(found.iterationCount()).isBetween(2, 40);
  }

  @Test
  void a_push_at_the_ground_settles_too() {
    NonConstrainedEmbedment found = NonConstrainedEmbedment.of(new LateralLoad(150, 0), FOOT, SAND);
    assertThat(found.depthIn()).isCloseTo(12 * Math.sqrt(2.34 * 150 * 3 / 150.0), within(1e-6));
    assertThat(found.depthIn()).isCloseTo(found.aIn(), within(1e-9));
  }

  @Test
  void a_post_that_nothing_pushes_needs_no_depth() {
    NonConstrainedEmbedment free = NonConstrainedEmbedment.of(new LateralLoad(0, 60), FOOT, SAND);
    assertThat(free.depthIn()).isZero();
    assertThat(free.iterationCount()).isZero();
  }

  @Test
  void below_12_ft_the_soil_gives_no_more() {
    LateralLoad heavy = new LateralLoad(5000, 240);
    NonConstrainedEmbedment found = NonConstrainedEmbedment.of(heavy, FOOT, SAND);
    assertThat(found.depthIn()).isGreaterThan(144);
    assertThat(found.s1Psf()).isCloseTo(600, within(1e-9));
  }

  @Test
  void one_pass_follows_a_sheet_that_stops_there() {
    NonConstrainedEmbedment pass =
        NonConstrainedEmbedment.onePass(
            new LateralLoad(3000, 96), FOOT, new LateralResistance(100, 1).at(144, 1.0 / 3));
    assertThat(pass.aIn()).isCloseTo(210.6, within(0.05));
    assertThat(pass.iterationCount()).isEqualTo(1);
    assertThat(pass.load().momentInLb()).isCloseTo(288000, within(1e-6));
  }

  @Test
  void it_refuses_pushes_that_cannot_be() {
    assertThatThrownBy(() -> new LateralLoad(-1, 60))
        .hasMessage("lateral force -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> new LateralLoad(1, -60))
        .hasMessage("height of the lateral force -60.0 in must be zero or more and finite");
    assertThatThrownBy(
            () -> NonConstrainedEmbedment.onePass(new LateralLoad(1, 60), FOOT, SAND.at(0, 1)))
        .hasMessage("S1 0.0 psf must be above zero and finite");
  }
}
