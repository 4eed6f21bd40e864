package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VelocityPressureTest {
  private static final ExposureConstants EXPOSURE_C = new ExposureConstants(9.5, 10800, 180);

  @Test
  void every_site_factor_multiplies_the_pressure() {
    assertThat(VelocityPressure.of(115, 0.85, new WindFactors(1, 0.85, 1)).pressurePsf())
        .isCloseTo(24.46, within(0.005));
    assertThat(VelocityPressure.of(100, 0.5, new WindFactors(1.5, 0.8, 0.9)).pressurePsf())
        .isCloseTo(25.6 * 0.5 * 1.5 * 0.8 * 0.9, within(1e-9));
  }

  @Test
  void the_exposure_coefficient_grows_with_height_above_15_ft_only() {
    assertThat(EXPOSURE_C.kzFactor(360)).isCloseTo(0.982, within(0.0005));
    assertThat(EXPOSURE_C.kzFactor(90)).isCloseTo(EXPOSURE_C.kzFactor(180), within(1e-12));
    assertThat(EXPOSURE_C.kzFactor(190)).isGreaterThan(EXPOSURE_C.kzFactor(180));
  }

  @Test
  void it_refuses_heights_and_speeds_that_cannot_be() {
    assertThatThrownBy(() -> EXPOSURE_C.kzFactor(-1))
        .hasMessage("height above ground -1.0 in must be zero or more and finite");
    assertThatThrownBy(() -> EXPOSURE_C.kzFactor(10801))
        .hasMessage(
            "height above ground 10801.0 in must be at most the gradient height, 10800.0 in");
    assertThatThrownBy(() -> VelocityPressure.of(-90, 1, new WindFactors(1, 0.85, 1)))
        .hasMessage("wind speed -90.0 mph must be zero or more and finite");
    assertThatThrownBy(() -> VelocityPressure.of(90, 0, new WindFactors(1, 0.85, 1)))
        .hasMessage("exposure coefficient K_z 0.0 must be above zero and finite");
  }
}
