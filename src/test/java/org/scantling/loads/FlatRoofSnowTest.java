package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlatRoofSnowTest {
  @Test
  void what_a_roof_carries_is_brought_back_to_the_ground() {
    // 0.8 * 39.68 + 8.354 = 40.1 psf by the Canadian code, over 0.7 * 1.2.
    assertThat(FlatRoofSnow.groundPsf(40.1, new SnowFactors(1, 1.2, 1)))
        .isCloseTo(47.74, within(0.01));
  }

  @Test
  void each_factor_multiplies_the_ground_snow() {
    assertThat(FlatRoofSnow.of(20, new SnowFactors(0.9, 1.2, 1.0), 20).flatRoofSnowPsf())
        .isCloseTo(15.12, within(1e-9));
    assertThat(FlatRoofSnow.of(20, new SnowFactors(1, 1, 0.8), 20).flatRoofSnowPsf())
        .isCloseTo(11.2, within(1e-9));
  }

  @Test
  void the_low_slope_minimum_stops_growing_at_20_psf_of_ground_snow() {
    SnowFactors factors = new SnowFactors(1, 1.2, 0.8);
    assertThat(FlatRoofSnow.of(20, factors, 20).lowSlopeMinimumPsf()).isCloseTo(16, within(1e-9));
    assertThat(FlatRoofSnow.of(50, factors, 20).lowSlopeMinimumPsf()).isCloseTo(16, within(1e-9));
    assertThat(FlatRoofSnow.of(10, factors, 20).lowSlopeMinimumPsf()).isCloseTo(8, within(1e-9));
  }

  @Test
  void it_refuses_snow_and_factors_that_cannot_be() {
    SnowFactors factors = new SnowFactors(1, 1.2, 0.8);
    assertThatThrownBy(() -> FlatRoofSnow.of(-1, factors, 20))
        .hasMessage("ground snow -1.0 psf must be zero or more and finite");
    assertThatThrownBy(() -> new SnowFactors(0, 1, 1))
        .hasMessage("exposure factor C_e 0.0 must be above zero and finite");
    assertThatThrownBy(() -> new SnowFactors(1, Double.POSITIVE_INFINITY, 1))
        .hasMessage("thermal factor C_t Infinity must be above zero and finite");
    assertThatThrownBy(() -> new SnowFactors(1, 1, Double.NaN))
        .hasMessage("importance factor I_s NaN must be above zero and finite");
  }

  @Test
  void snow_and_rain_of_the_other_code_are_brought_to_the_ground() {
    // 0.8 · 39.68 + 8.354 = 40.10 psf, over 0.7 · 1.2; of 20 psf of rain on 10 of snow 8 count.
    SnowAndRain snow = SnowAndRain.of(39.68, 8.354, 0.8, 1.2);
    assertThat(snow.roofPsf()).isCloseTo(40.1, within(0.005));
    assertThat(snow.groundPsf()).isCloseTo(47.74, within(0.01));
    assertThat(SnowAndRain.of(10, 20, 0.8, 1.2).roofPsf()).isCloseTo(16, within(1e-9));
  }

  @Test
  void an_open_top_keeps_a_share() {
    assertThat(KeptSnow.of(0.5, 15.12).keptPsf()).isCloseTo(7.56, within(1e-9));
  }
}
