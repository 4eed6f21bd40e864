package org.scantling.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Values of IBC 2012 table 1806.2: sand 0.25 and 150 psf/ft, clay 130 psf and 100 psf/ft. */
class SlidingTest {
  private static final PresumptiveSoil SAND = new PresumptiveSoil(2000, 150, 0.25, 0);
  private static final PresumptiveSoil CLAY = new PresumptiveSoil(1500, 100, 0, 130);

  @Test
  void in_sand_the_weight_rubs_and_the_side_leans() {
    Sliding pad = Sliding.of(100, new Sliding.Footing(200, 144, 12, 12), SAND);
    assertThat(pad.baseLb()).isCloseTo(50, within(1e-9));
    assertThat(pad.sideLb()).isCloseTo(75, within(1e-9));
    assertThat(pad.resistanceLb()).isCloseTo(125, within(1e-9));
    assertThat(pad.check().ratio()).isCloseTo(0.8, within(1e-9));
  }

  @Test
  void in_clay_the_base_sticks_by_its_area() {
    Sliding pad = Sliding.of(100, new Sliding.Footing(1000, 288, 0, 12), CLAY);
    assertThat(pad.baseLb()).isCloseTo(260, within(1e-9));
    assertThat(pad.sideLb()).isZero();
  }

  @Test
  void in_clay_never_more_than_half_the_dead_load_counts() {
    Sliding light = Sliding.of(100, new Sliding.Footing(180, 288, 0, 12), CLAY);
    assertThat(light.baseLb()).isCloseTo(90, within(1e-9));
    assertThat(light.check().passes()).isFalse();
  }

  @Test
  void a_side_twice_as_deep_holds_four_times() {
    Sliding shallow = Sliding.of(100, new Sliding.Footing(0, 0, 12, 10), SAND);
    Sliding deep = Sliding.of(100, new Sliding.Footing(0, 0, 24, 10), SAND);
    assertThat(deep.sideLb()).isCloseTo(4 * shallow.sideLb(), within(1e-9));
    assertThat(shallow.sideLb()).isCloseTo(62.5, within(1e-9));
  }

  @Test
  void what_nothing_holds_is_refused() {
    Sliding loose = Sliding.of(1, new Sliding.Footing(0, 144, 0, 0), CLAY);
    assertThat(loose.resistanceLb()).isZero();
    assertThatThrownBy(loose::check).hasMessage("capacity 0.0 must be above zero and finite");
  }

  @Test
  void it_refuses_footings_that_cannot_be() {
    assertThatThrownBy(() -> new Sliding.Footing(-1, 144, 12, 12))
        .hasMessage("dead load on the footing -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> new Sliding.Footing(1, -144, 12, 12))
        .hasMessage("base of the footing -144.0 in² must be zero or more and finite");
    assertThatThrownBy(() -> new Sliding.Footing(1, 144, -12, 12))
        .hasMessage("depth of the footing's side -12.0 in must be zero or more and finite");
    assertThatThrownBy(() -> new Sliding.Footing(1, 144, 12, -12))
        .hasMessage("width of the footing's side -12.0 in must be zero or more and finite");
    assertThatThrownBy(() -> Sliding.of(-1, new Sliding.Footing(1, 144, 12, 12), SAND))
        .hasMessage("sideways push on the footing -1.0 lb must be zero or more and finite");
    Sliding.Footing pad = new Sliding.Footing(200, 144, 12, 12);
    SoilPressure side = LateralResistance.tabulated(SAND).at(12, 1);
    assertThatThrownBy(() -> new Sliding(1, pad, SAND, -1, 0, side, 0))
        .hasMessage("hold of the base -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> new Sliding(1, pad, SAND, 0, 0, side, -1))
        .hasMessage("hold of the side -1.0 lb must be zero or more and finite");
  }
}
