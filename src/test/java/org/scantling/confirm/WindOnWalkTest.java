package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;

/** The header's top is 90 − 0.5 + 3.5 = 93 in up, the crossbeams' 92.5 + 3.5 = 96 in. */
class WindOnWalkTest {
  private final SidePush across = SmallArbour.wind(SmallArbour.geometry()).across();
  private final SidePush along = SmallArbour.wind(SmallArbour.geometry()).along();

  @Test
  void wind_square_to_the_walk_presses_half_a_bay_and_a_tail_on_each_post() {
    // Header 3.5 · (21 + 15) = 126 in², crossbeam ends 1.5 · 3.5 · 36/10.5 = 18 in².
    // Post 3.5 · 90 = 315, half the rail 3.5 · (21 − 1.75) = 67.375, half the picket from 25.75 up
    // to 89.5 in: 1.5 · 63.75/2 = 47.8125 in², half of which leans on the header.
    // 574.19 of 36 · 96 in² is 0.166 solid, so C_f 1.8 and 22.95 psf.
    // Leaves between them: (21 · 90 − 430.1875)/144 · 15 · 0.5 · 0.5 = 38.016 lb.
    assertThat(across.topLb()).isCloseTo(167.90625 / 144 * 22.95, within(1e-6));
    assertThat(across.spreadLb()).isCloseTo(406.28125 / 144 * 22.95 + 38.01595, within(1e-4));
    assertThat(across.forceLb()).isCloseTo(129.527, within(1e-3));
  }

  @Test
  void the_push_on_header_pickets_and_crossbeams_acts_where_they_are() {
    // (149.90625 · 91.25 + 18 · 94.25)/167.90625 = 91.5716 in; along the walk 92.5 + 1.75 in.
    assertThat(across.topAtIn()).isCloseTo(91.5716, within(1e-4));
    assertThat(along.topAtIn()).isCloseTo(94.25, within(1e-9));
    // 26.7600 · 91.5716 + 102.7670 · 45 = 7075.0 in·lb, 54.62 in up.
    assertThat(across.momentAtInLb(0)).isCloseTo(7075.0, within(0.1));
    assertThat(across.resultantIn()).isCloseTo(54.62, within(0.01));
    // 24 in up: 26.7600 · 67.5716 + 102.7670 · 66²/180.
    assertThat(across.momentAtInLb(24)).isCloseTo(4295.2, within(0.1));
  }

  @Test
  void a_picket_turns_a_post_no_less_than_its_two_ends_do() {
    // One picket of a bay more: half of it, 47.8125 in² at 22.95 psf less the leaves it covers,
    // with its upper half 91.25 in up and its lower half no lower than the rail, 24 in up.
    SidePush more = SmallArbour.wind(SmallArbour.geometry(), 2).across();
    double picketLb = 47.8125 / 144 * 22.95;
    double coveredLb = 47.8125 / 144 * 15 * 0.25;
    assertThat(more.momentAtInLb(0) - across.momentAtInLb(0))
        .isGreaterThan(picketLb * (91.25 + 24) / 2 - coveredLb * 45);
  }

  @Test
  void climbers_on_the_top_push_at_its_edge() {
    // 6 in of leaves, 0.8 full, drag 0.5, over 36 in of the side at 15 psf: 1.5 · 15 · 0.4 = 9 lb,
    // 96 in up; the push on the timber besides.
    SidePush leafy = SmallArbour.wind(SmallArbour.geometry(), 1, 6).across();
    double timberLb = across.topLb();
    assertThat(leafy.topLb()).isCloseTo(timberLb + 9, within(1e-6));
    assertThat(leafy.topAtIn())
        .isCloseTo((timberLb * across.topAtIn() + 9 * 96) / (timberLb + 9), within(1e-9));
    assertThat(leafy.momentAtInLb(0) - across.momentAtInLb(0)).isCloseTo(9 * 96, within(1e-6));
  }

  @Test
  void wind_along_the_walk_pushes_the_climbers_that_stand_over_the_end_crossbeam() {
    // Of 6 in of leaves 3 stand over the crossbeam of 96 in: 2 ft² · 15 · 0.8 · 0.5 = 12 lb, 3 lb a
    // post, 96 + 1.5 in up. Of 9 in 4.5 stand over it and 1 in hangs out under its 3.5: 22 lb.
    SidePush leafy = SmallArbour.wind(SmallArbour.geometry(), 1, 6).along();
    assertThat(leafy.topLb() - along.topLb()).isCloseTo(3, within(1e-9));
    assertThat(leafy.momentAtInLb(0) - along.momentAtInLb(0)).isCloseTo(3 * 97.5, within(1e-6));
    assertThat(leafy.spreadLb()).isEqualTo(along.spreadLb());
    SidePush thick = SmallArbour.wind(SmallArbour.geometry(), 1, 9).along();
    assertThat(thick.topLb() - along.topLb()).isCloseTo(5.5, within(1e-9));
  }

  @Test
  void a_rail_takes_its_own_wind_and_half_of_what_closes_its_bay() {
    // Of one bay: the rail 3.5 · (42 − 3.5), half a picket of 1.5 · 63.75, at 22.95 psf; half of
    // the
    // leaves of twice the half bay.
    double railLb = (3.5 * 38.5 + 47.8125) / 144 * 22.95 + 38.01595;
    assertThat(SmallArbour.wind(SmallArbour.geometry()).onRailLb()).isCloseTo(railLb, within(1e-4));
  }

  @Test
  void the_header_holds_half_of_the_leaves_that_close_its_side() {
    assertThat(SmallArbour.wind(SmallArbour.geometry()).leavesOnHeaderLb())
        .isCloseTo(38.01595 / 2, within(1e-4));
  }

  @Test
  void wind_along_the_walk_meets_one_crossbeam_in_full_and_the_rest_in_its_lee() {
    // 336 + 2 · 315 in² of 96 · 96 is 0.105 solid: no less than 0.1 solid at C_f 2.0, 25.5 psf on
    // 6.4 ft², 163.2 lb. One crossbeam takes 336/966 of it, 56.77 lb; the other six count 0.3 each,
    // 2.8 in all, shared by four posts.
    assertThat(along.topLb()).isCloseTo(163.2 * 336 / 966 * 2.8 / 4, within(1e-6));
    assertThat(along.spreadLb()).isCloseTo(163.2 * 315 / 966, within(1e-6));
  }

  @Test
  void between_two_bays_a_post_takes_a_whole_bay() {
    Geometry two = SmallArbour.geometry(2, new Geometry.Headers(false, 3.5, 3.5, 13.25, 0.5));
    SidePush inner = SmallArbour.wind(two).across();
    // Header 3.5 · 42 + ends 1.5 · 3.5 · 42/10.5 = 168 in²; post 315, rail 3.5 · 38.5 = 134.75,
    // picket 1.5 · 63.75 = 95.625 in², half of it on the header; 713.4 of 42 · 96 in² is 0.18
    // solid.
    // Leaves (42 · 90 − 545.375)/144 · 3.75 = 84.235 lb.
    assertThat(inner.topLb()).isCloseTo(215.8125 / 144.0 * 22.95, within(1e-6));
    assertThat(inner.spreadLb()).isCloseTo(497.5625 / 144.0 * 22.95 + 84.235, within(1e-3));
  }

  @Test
  void a_side_that_pickets_all_but_close_is_a_wall() {
    // 42 half pickets of 47.8125 in² make 2008.125 in², 2534.5 of 3456 in²: 0.733 solid. A wall of
    // C_f 1.8 takes 15 · 0.85 · 1.8 · (1 − 0.26664^1.5) = 19.790 psf on all of its 24 ft².
    SidePush closed = SmallArbour.wind(SmallArbour.geometry(), 42).across();
    assertThat(closed.forceLb()).isCloseTo(474.97, within(0.02));
    assertThat(closed.topLb()).isCloseTo(474.97 * 1148.0625 / 2534.5, within(0.02));
  }

  @Test
  void a_push_above_the_top_of_the_post_turns_it_as_well() {
    // h 90 in, EI 1e6, 10 lb at 96 in: 10 · 90³/3 + 10 · 6 · 90²/2 = 2 430 000 + 243 000 lb·in³.
    assertThat(new SidePush(10, 96, 0, 90).swayIn(1e6)).isCloseTo(2.673, within(1e-9));
    assertThat(new SidePush(0, 80, 90).swayIn(1e6)).isCloseTo(80 * 729_000 / 8e6, within(1e-9));
  }
}
