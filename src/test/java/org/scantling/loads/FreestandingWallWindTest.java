package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FreestandingWallWindTest {
  private static final WallRule RULE = new WallRule(1.4, 0.85, 16);

  @Test
  void openings_relieve_a_nearly_solid_wall() {
    FreestandingWallWind wind = FreestandingWallWind.on(new WindPanel(1152, 1440), 20, RULE);
    assertThat(wind.openingFactor()).isCloseTo(0.9106, within(0.00005));
    assertThat(wind.pressurePsf()).isCloseTo(21.67, within(0.005));
    assertThat(wind.forceLb()).isCloseTo(216.7, within(0.05));
    assertThat(wind.minimumGoverns()).isFalse();
  }

  @Test
  void the_minimum_pressure_governs_in_a_light_wind() {
    FreestandingWallWind wind = FreestandingWallWind.on(new WindPanel(144, 144), 10, RULE);
    assertThat(wind.calculatedPsf()).isCloseTo(11.9, within(1e-9));
    assertThat(wind.forceLb()).isCloseTo(16, within(1e-12));
    assertThat(wind.minimumGoverns()).isTrue();
  }

  @Test
  void it_refuses_an_open_panel() {
    assertThatThrownBy(() -> FreestandingWallWind.on(new WindPanel(70, 100), 20, RULE))
        .hasMessage(
            "solidity 0.7 must be over 0.7 for a freestanding wall; a panel with more openings is"
                + " an open frame");
    assertThatThrownBy(() -> FreestandingWallWind.openingFactor(1.01))
        .hasMessage("solidity 1.01 must be between 0 and 1");
  }
}
