package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VelocityPressureTest {
  private static final ExposureConstants EXPOSURE_C = new ExposureConstants(9.5, 10800, 180);

  /** A factor as a table prints it: that of a wind that grows as the height. */
  static HeightFactor printed(double kz) {
    return new ExposureConstants(2, 2.01, Double.MIN_VALUE).at(kz);
  }

  @Test
  void every_site_factor_multiplies_the_pressure() {
    WindFactors flat = new WindFactors(HillWind.flat(1), 0.85, 1);
    assertThat(VelocityPressure.of(115, printed(0.85), flat).pressurePsf())
        .isCloseTo(24.46, within(0.005));
    WindFactors crest = new WindFactors(HillWind.flat(1.5), 0.8, 0.9);
    assertThat(VelocityPressure.of(100, printed(0.5), crest).pressurePsf())
        .isCloseTo(25.6 * 0.5 * 1.5 * 0.8 * 0.9, within(1e-9));
  }

  @Test
  void the_exposure_coefficient_grows_with_height_above_15_ft_only() {
    assertThat(EXPOSURE_C.at(360).factor()).isCloseTo(0.982, within(0.0005));
    assertThat(EXPOSURE_C.at(90).factor()).isCloseTo(EXPOSURE_C.at(180).factor(), within(1e-12));
    assertThat(EXPOSURE_C.at(190).factor()).isGreaterThan(EXPOSURE_C.at(180).factor());
  }

  @Test
  void it_refuses_heights_and_speeds_that_cannot_be() {
    assertThatThrownBy(() -> EXPOSURE_C.at(-1))
        .hasMessage("height above ground -1.0 in must be zero or more and finite");
    assertThatThrownBy(() -> EXPOSURE_C.at(10801))
        .hasMessage(
            "height above ground 10801.0 in must be at most the gradient height, 10800.0 in");
    WindFactors flat = new WindFactors(HillWind.flat(1), 0.85, 1);
    assertThatThrownBy(() -> VelocityPressure.of(-90, printed(1), flat))
        .hasMessage("wind speed -90.0 mph must be zero or more and finite");
    assertThatThrownBy(() -> new HeightFactor(EXPOSURE_C, 180, 0))
        .hasMessage("exposure coefficient K_z 0.0 must be above zero and finite");
  }
}
