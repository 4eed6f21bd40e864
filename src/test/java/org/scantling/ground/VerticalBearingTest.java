package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VerticalBearingTest {
  @Test
  void a_footing_presses_with_its_load_over_its_area() {
    VerticalBearing bearing = VerticalBearing.of(1000, VerticalBearing.circleIn2(12), 2000);
    assertThat(bearing.pressurePsf()).isCloseTo(1273, within(0.5));
    assertThat(bearing.check().ratio()).isCloseTo(0.637, within(0.0005));
    assertThat(bearing.neededDiameterIn()).isCloseTo(9.57, within(0.005));
  }

  @Test
  void the_needed_diameter_is_just_enough() {
    double diameterIn = VerticalBearing.of(3000, 1, 1500).neededDiameterIn();
    VerticalBearing bearing = VerticalBearing.of(3000, VerticalBearing.circleIn2(diameterIn), 1500);
    assertThat(bearing.check().ratio()).isCloseTo(1, within(1e-12));
    assertThat(bearing.check().passes()).isTrue();
  }

  @Test
  void it_refuses_footings_that_cannot_be() {
    assertThatThrownBy(() -> VerticalBearing.of(-1, 100, 2000))
        .hasMessage("vertical load -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> VerticalBearing.of(1, 0, 2000))
        .hasMessage("bearing area 0.0 in² must be above zero and finite");
    assertThatThrownBy(() -> VerticalBearing.of(1, 100, 0))
        .hasMessage("soil bearing 0.0 psf must be above zero and finite");
    assertThatThrownBy(() -> VerticalBearing.circleIn2(-1))
        .hasMessage("diameter -1.0 in must be zero or more and finite");
  }

  @Test
  void a_footing_that_presses_by_itself_leaves_less_for_the_load() {
    // 407.96 lb on an 18 in hole, 230.86 psf, and 125 psf of concrete.
    double areaIn2 = VerticalBearing.circleIn2(18);
    VerticalBearing bearing = VerticalBearing.of(407.96, areaIn2, 3000, 125);
    assertThat(bearing.pressurePsf()).isCloseTo(355.86, within(0.005));
    assertThat(bearing.neededDiameterIn())
        .isCloseTo(VerticalBearing.of(407.96, areaIn2, 2875).neededDiameterIn(), within(1e-9));
    assertThat(VerticalBearing.of(1, areaIn2, 100, 125).neededDiameterIn()).isInfinite();
    assertThat(VerticalBearing.of(0, areaIn2, 100, 125).neededDiameterIn()).isZero();
  }
}
