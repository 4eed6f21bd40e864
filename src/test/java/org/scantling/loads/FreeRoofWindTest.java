package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class FreeRoofWindTest {
  /** ASCE 7-16 figure 27.3-4, flat roof, clear wind flow, cases A and B; from memory. */
  private static final List<NetPressureCoefficients> CLEAR_FLAT =
      List.of(new NetPressureCoefficients(1.2, 0.3), new NetPressureCoefficients(-1.1, -0.1));

  @Test
  void lift_and_press_come_from_the_worst_half_of_any_case() {
    FreeRoofWind wind = FreeRoofWind.on(16, new FreeRoofRule(0.85, 0.5, CLEAR_FLAT));
    assertThat(wind.upliftPsf()).isCloseTo(7.48, within(1e-9));
    assertThat(wind.downforcePsf()).isCloseTo(8.16, within(1e-9));
    assertThat(wind.cases()).hasSize(2);
    assertThat(wind.cases().get(1).meanPsf()).isCloseTo(-4.08, within(1e-9));
  }

  @Test
  void the_worst_half_of_a_figure_may_be_taken_for_the_whole_top() {
    List<NetPressureCoefficients> even =
        List.of(NetPressureCoefficients.even(1.2), NetPressureCoefficients.even(-1.1));
    FreeRoofWind wind = FreeRoofWind.on(16, new FreeRoofRule(0.85, 0.5, even));
    assertThat(wind.cases().get(0).meanPsf()).isCloseTo(8.16, within(1e-9));
    assertThat(wind.cases().get(1).meanPsf()).isCloseTo(-7.48, within(1e-9));
  }

  @Test
  void a_top_that_is_only_pressed_has_no_lift() {
    List<NetPressureCoefficients> pressed = List.of(new NetPressureCoefficients(0.9, 1.5));
    FreeRoofWind wind = FreeRoofWind.on(10, new FreeRoofRule(1, 1, pressed));
    assertThat(wind.upliftPsf()).isZero();
    assertThat(wind.downforcePsf()).isCloseTo(15, within(1e-9));
  }

  @Test
  void it_refuses_a_figure_without_cases() {
    assertThatThrownBy(() -> new FreeRoofRule(0.85, 0.5, List.of()))
        .hasMessage("a free roof has 0 load cases and must have at least 1");
    assertThatThrownBy(() -> new NetPressureCoefficients(Double.NaN, 0))
        .hasMessage("net pressure coefficient, windward NaN must be finite");
  }

  @Test
  void a_part_at_a_corner_is_lifted_harder_but_never_less_than_the_whole() {
    // 16 · 0.85 · 0.5 = 6.8 psf; 3.3 over 36 of 45 in and 1.7 over 9 are 2.98; the whole 1.1.
    FreeRoofWind wind = FreeRoofWind.on(16, new FreeRoofRule(0.85, 0.5, CLEAR_FLAT));
    RoofEdgeZone small = new RoofEdgeZone(36, List.of(new RoofEdgeZone.Band(1, 3.3, 1.7)));
    assertThat(wind.atCorner(small.part(1200, 45)).upliftPsf()).isCloseTo(20.26, within(0.005));
    RoofEdgeZone calm = new RoofEdgeZone(36, List.of(new RoofEdgeZone.Band(1, 0.5, 0.5)));
    assertThat(wind.atCorner(calm.part(1200, 45)).upliftPsf()).isCloseTo(7.48, within(1e-9));
    assertThat(wind.atCorner(calm.part(1200, 45)).factor()).isEqualTo(1.1);
  }
}
