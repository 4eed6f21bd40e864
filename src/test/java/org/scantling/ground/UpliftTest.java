package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class UpliftTest {
  private static final double POST_IN = 3.5;
  private static final BallastWeights WEIGHTS = new BallastWeights(150, 100, 0);

  @Test
  void a_full_collar_holds_with_its_concrete() {
    Uplift uplift = Uplift.of(300, 100, BuriedFooting.fullCollar(36, 12, POST_IN), WEIGHTS);
    double concreteFt3 = (Math.PI * 36 - 12.25) * 36 / 1728;
    assertThat(uplift.concreteLb()).isCloseTo(150 * concreteFt3, within(1e-9));
    assertThat(uplift.concreteLb()).isCloseTo(315, within(0.5));
    assertThat(uplift.soilLb()).isZero();
    assertThat(uplift.resistanceLb()).isCloseTo(249, within(0.5));
    assertThat(uplift.demandLb()).isCloseTo(180, within(1e-9));
    assertThat(uplift.check().passes()).isTrue();
  }

  @Test
  void soil_stands_on_a_collar_at_the_bottom() {
    BuriedFooting footing = new BuriedFooting(48, 16, 12, 0, POST_IN);
    Uplift uplift = Uplift.of(0, 0, footing, WEIGHTS);
    double ringFt2 = (Math.PI * 64 - 12.25) / 144;
    assertThat(uplift.concreteLb()).isCloseTo(150 * ringFt2, within(1e-9));
    assertThat(uplift.soilLb()).isCloseTo(300 * ringFt2, within(1e-9));
    assertThat(uplift.resistanceLb()).isCloseTo(0.6 * 450 * ringFt2, within(1e-9));
  }

  @Test
  void a_bell_carries_concrete_and_soil_above_it() {
    BuriedFooting footing = new BuriedFooting(48, 20, 12, 10, 0);
    assertThat(footing.concreteIn3()).isCloseTo(Math.PI * (100 * 12 + 25 * 36), within(1e-9));
    assertThat(footing.soilIn3()).isCloseTo(Math.PI * 75 * 36, within(1e-9));
  }

  @Test
  void a_post_in_tamped_fill_has_only_the_timber_on_it() {
    Uplift uplift = Uplift.of(150, 100, BuriedFooting.none(36, POST_IN), WEIGHTS);
    assertThat(uplift.concreteLb()).isZero();
    assertThat(uplift.soilLb()).isZero();
    assertThat(uplift.resistanceLb()).isCloseTo(60, within(1e-9));
    assertThat(uplift.check().passes()).isFalse();
  }

  @Test
  void skin_friction_counts_in_full_where_it_is_given() {
    BallastWeights gripping = new BallastWeights(150, 100, 50);
    Uplift uplift = Uplift.of(0, 0, BuriedFooting.fullCollar(36, 12, POST_IN), gripping);
    assertThat(uplift.skinFrictionLb()).isCloseTo(50 * Math.PI * 3, within(1e-9));
    assertThat(uplift.resistanceLb())
        .isCloseTo(0.6 * uplift.concreteLb() + uplift.skinFrictionLb(), within(1e-9));
  }

  @Test
  void it_refuses_footings_that_cannot_be() {
    assertThatThrownBy(() -> new BuriedFooting(36, 12, 40, 0, POST_IN))
        .hasMessage("collar thickness 40.0 in must be at most the embedment, 36.0 in");
    assertThatThrownBy(() -> new BuriedFooting(36, 12, 10, 14, POST_IN))
        .hasMessage("shaft diameter 14.0 in must be at most the collar diameter, 12.0 in");
    assertThatThrownBy(() -> new BallastWeights(0, 100, 0))
        .hasMessage("unit weight of concrete 0.0 pcf must be above zero and finite");
    assertThatThrownBy(() -> Uplift.of(-1, 0, BuriedFooting.none(36, POST_IN), WEIGHTS))
        .hasMessage("wind uplift -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> Uplift.of(1, -1, BuriedFooting.none(36, POST_IN), WEIGHTS))
        .hasMessage("weight of the structure on the post -1.0 lb must be zero or more and finite");
  }

  @Test
  void concrete_presses_with_what_it_is_heavier_than_the_soil() {
    assertThat(ConcreteOverSoil.of(WEIGHTS, 30).pressurePsf()).isCloseTo(125, within(1e-9));
    BallastWeights light = new BallastWeights(90, 100, 0);
    assertThat(ConcreteOverSoil.of(light, 30).pressurePsf()).isZero();
    assertThat(ConcreteOverSoil.of(light, 30).lines()).isEmpty();
  }

  @Test
  void fill_grips_four_faces_the_harder_the_deeper() {
    // 0.15 · 100 pcf · 15 in · 4 · 3.5 in · 30 in / 1728.
    assertThat(PostGrip.of(0.15, 100, 30, 3.5).gripLb()).isCloseTo(54.69, within(0.005));
    assertThat(PostGrip.of(0.15, 100, 60, 3.5).gripLb()).isCloseTo(4 * 54.6875, within(1e-9));
  }
}
