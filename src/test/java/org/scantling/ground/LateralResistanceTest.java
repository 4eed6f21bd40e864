package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LateralResistanceTest {
  private static final PresumptiveSoil SAND = new PresumptiveSoil(2000, 150, 0.25, 0);

  @Test
  void pressure_grows_with_depth_down_to_12_ft() {
    LateralResistance soil = LateralResistance.tabulated(SAND);
    assertThat(soil.pressurePsf(72, 1.0 / 3)).isCloseTo(300, within(1e-9));
    assertThat(soil.pressurePsf(144, 1)).isCloseTo(1800, within(1e-9));
    assertThat(soil.pressurePsf(200, 1)).isCloseTo(1800, within(1e-9));
    assertThat(soil.pressurePsf(200, 1.0 / 3)).isCloseTo(600, within(1e-9));
  }

  @Test
  void isolated_posts_may_take_twice_the_pressure() {
    assertThat(LateralResistance.doubled(SAND)).isEqualTo(new LateralResistance(150, 2));
    assertThat(LateralResistance.doubled(SAND).pressurePsf(72, 1.0 / 3))
        .isCloseTo(600, within(1e-9));
  }

  @Test
  void it_refuses_soil_that_pushes_back_with_nothing() {
    assertThatThrownBy(() -> new LateralResistance(0, 1))
        .hasMessage("soil lateral bearing 0.0 psf/ft must be above zero and finite");
    assertThatThrownBy(() -> new LateralResistance(100, 0))
        .hasMessage("lateral bearing increase 0.0 must be above zero and finite");
    assertThatThrownBy(() -> LateralResistance.tabulated(SAND).pressurePsf(-1, 1))
        .hasMessage("embedment -1.0 in must be zero or more and finite");
    assertThatThrownBy(() -> LateralResistance.tabulated(SAND).pressurePsf(36, 1.5))
        .hasMessage("share of the embedment 1.5 must be between 0 and 1");
    assertThatThrownBy(() -> new PresumptiveSoil(0, 100, 0, 130))
        .hasMessage("soil bearing 0.0 psf must be above zero and finite");
    assertThatThrownBy(() -> new PresumptiveSoil(1500, 100, -0.1, 130))
        .hasMessage("soil friction -0.1 must be zero or more and finite");
  }
}
