package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.loads.SolidityBands.Band;

class LatticeWindTest {
  private static final SolidityBands BANDS =
      new SolidityBands(List.of(new Band(0, 2.0), new Band(0.1, 1.8), new Band(0.3, 1.6)), 0.7);
  private static final LatticeRule RULE = new LatticeRule(BANDS, 0.85, 16);

  @Test
  void a_lone_post_takes_the_coefficient_of_the_most_open_band() {
    LatticeWind wind = LatticeWind.on(new WindPanel(5.5 * 108, 5.5 * 1080), 24.46, RULE);
    assertThat(wind.cfFactor()).isCloseTo(1.8, within(1e-12));
    wind = LatticeWind.on(new WindPanel(5.5 * 108, 5.5 * 1200), 24.46, RULE);
    assertThat(wind.cfFactor()).isCloseTo(2.0, within(1e-12));
    assertThat(wind.pressurePsf()).isCloseTo(41.58, within(0.005));
    assertThat(wind.forceLb()).isCloseTo(41.582 * 5.5 * 108 / 144, within(0.01));
    assertThat(wind.minimumGoverns()).isFalse();
  }

  @Test
  void a_band_holds_from_its_start_to_just_under_the_next() {
    assertThat(BANDS.cfFactor(0.0999)).isCloseTo(2.0, within(1e-12));
    assertThat(BANDS.cfFactor(0.1)).isCloseTo(1.8, within(1e-12));
    assertThat(BANDS.cfFactor(0.295)).isCloseTo(1.8, within(1e-12));
    assertThat(BANDS.cfFactor(0.3)).isCloseTo(1.6, within(1e-12));
    assertThat(BANDS.cfFactor(0.7)).isCloseTo(1.6, within(1e-12));
  }

  @Test
  void the_minimum_pressure_governs_in_a_light_wind() {
    LatticeWind wind = LatticeWind.on(new WindPanel(144, 1000), 9, RULE);
    assertThat(wind.calculatedPsf()).isCloseTo(13.77, within(1e-9));
    assertThat(wind.pressurePsf()).isCloseTo(16, within(1e-12));
    assertThat(wind.forceLb()).isCloseTo(16, within(1e-12));
    assertThat(wind.minimumGoverns()).isTrue();
  }

  @Test
  void it_refuses_a_panel_too_solid_to_be_open() {
    assertThatThrownBy(() -> LatticeWind.on(new WindPanel(75, 100), 20, RULE))
        .hasMessage(
            "solidity 0.75 must be at most 0.7 for an open frame; a more solid panel is a"
                + " freestanding wall");
    assertThatThrownBy(() -> new WindPanel(110, 100))
        .hasMessage("solid area 110.0 in² must be at most the gross area, 100.0 in²");
  }

  @Test
  void it_refuses_bands_with_a_hole_at_the_start_or_out_of_order() {
    assertThatThrownBy(() -> new SolidityBands(List.of(new Band(0.1, 1.8)), 0.7))
        .hasMessage("solidity bands [Band[fromRatio=0.1, cfFactor=1.8]] must begin at 0");
    assertThatThrownBy(() -> new SolidityBands(List.of(new Band(0, 2), new Band(0, 1.8)), 0.7))
        .hasMessage(
            "solidity bands [Band[fromRatio=0.0, cfFactor=2.0], Band[fromRatio=0.0,"
                + " cfFactor=1.8]] must rise");
    assertThatThrownBy(() -> new SolidityBands(List.of(), 0.7))
        .hasMessage("solidity bands [] must begin at 0");
  }
}
