package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FrostDepthTest {
  private static final FrostSoil SILT = new FrostSoil(100, 0.15, 0.76);

  @Test
  void bare_silt_freezes_30_in_in_a_winter_of_1000_degree_days() {
    FrostDepth frost = FrostDepth.of(SILT, new FrostWinter(1000, 0.7, 100, 47));
    assertThat(frost.depthIn()).isCloseTo(30.2, within(0.05));
    assertThat(frost.stefanIn()).isCloseTo(41.26, within(0.005));
    assertThat(frost.thermalRatio()).isCloseTo(15 / 7.0, within(1e-9));
    assertThat(frost.depthIn()).isCloseTo(frost.lambdaFactor() * frost.stefanIn(), within(1e-9));
  }

  @Test
  void turf_keeps_the_frost_shallower() {
    assertThat(FrostDepth.of(SILT, new FrostWinter(1000, 0.5, 100, 47)).depthIn())
        .isCloseTo(24.5, within(0.05));
  }

  @Test
  void soil_keeps_its_heats() {
    assertThat(SILT.latentHeatBtuPerFt3()).isCloseTo(2160, within(1e-9));
    assertThat(SILT.volumetricHeatBtuPerFt3F()).isCloseTo(28.25, within(1e-9));
  }

  @Test
  void it_refuses_winters_and_soils_outside_the_equation() {
    assertThatThrownBy(() -> new FrostWinter(1000, 0.7, 100, 31.9))
        .hasMessage(
            "mean annual temperature 31.9 F must be 32 or more; colder ground stays frozen and is"
                + " a case for an engineer");
    assertThatThrownBy(() -> new FrostWinter(0, 0.7, 100, 47))
        .hasMessage("air-freezing index 0.0 °F·days must be above zero and finite");
    assertThatThrownBy(() -> new FrostSoil(100, 0, 0.76))
        .hasMessage("water content 0.0 must be above zero and finite");
  }
}
