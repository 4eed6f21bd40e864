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
    // to 89.5 in: 1.5 · 63.75/2 = 47.8125 in².
    // 574.1875 of 36 · 96 in² is 0.166 solid, so C_f 1.8 and 22.95 psf, 91.511 lb.
    // Leaves between them: (21 · 90 − 430.1875)/144 · 15 · 0.5 · 0.5 = 38.016 lb.
    assertThat(across.forceLb()).isCloseTo(91.511 + 38.016, within(1e-3));
  }

  @Test
  void a_picket_turns_the_post_as_its_two_ends_do() {
    // Half of it at the middle of the header, 91.25 in up, half at that of the rail, 24 in up.
    double picketIn2 = 47.8125;
    double headerIn3 = 126 * 91.25 + 18 * 94.25;
    double postIn3 = (315 + 67.375) * 45;
    double handInLb =
        (headerIn3 + postIn3 + picketIn2 * (91.25 + 24) / 2) / 144 * 22.95 + 38.01595 * 45;
    assertThat(handInLb).isCloseTo(6994.97, within(0.01));
    assertThat(across.momentAtInLb(0)).isCloseTo(handInLb, within(0.1));
    // (91.25 + 24)/2 − 45 = 12.625 of 91.25 − 45 = 46.25 in: 0.273 of it counts at the top.
    assertThat(across.topLb()).isCloseTo((144 + 0.27297 * picketIn2) / 144 * 22.95, within(1e-3));
  }

  @Test
  void the_push_on_header_and_crossbeams_acts_where_they_are() {
    // (139.0515 · 91.25 + 18 · 94.25)/157.0515 = 91.594 in; along the walk 92.5 + 1.75 in.
    assertThat(across.topAtIn()).isCloseTo(91.594, within(1e-3));
    assertThat(along.topAtIn()).isCloseTo(94.25, within(1e-9));
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
  void the_header_holds_half_of_all_that_closes_its_side() {
    // Half of the picket is 23.90625 in², of which 0.27297 · 47.8125 = 13.0515 are in the push on
    // the post; half of the leaves.
    assertThat(SmallArbour.wind(SmallArbour.geometry()).hungOnHeaderLb())
        .isCloseTo((23.90625 - 13.0515) / 144 * 22.95 + 38.01595 / 2, within(1e-3));
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
    // picket 1.5 · 63.75 = 95.625 in²; 713.375 of 42 · 96 in² is 0.18 solid, 113.694 lb. Leaves (42
    // · 90 − 545.375)/144 · 3.75 = 84.235 lb.
    assertThat(inner.forceLb()).isCloseTo(113.694 + 84.235, within(1e-2));
  }

  @Test
  void a_side_that_pickets_all_but_close_is_a_wall() {
    // 42 half pickets of 47.8125 in² make 2008.125 in², 2534.5 of 3456 in²: 0.733 solid. A wall of
    // C_f 1.8 takes 15 · 0.85 · 1.8 · (1 − 0.26664^1.5) = 19.790 psf on all of its 24 ft².
    SidePush closed = SmallArbour.wind(SmallArbour.geometry(), 42).across();
    assertThat(closed.forceLb()).isCloseTo(474.97, within(0.02));
  }

  @Test
  void a_push_above_the_top_of_the_post_turns_it_as_well() {
    // h 90 in, EI 1e6, 10 lb at 96 in: 10 · 90³/3 + 10 · 6 · 90²/2 = 2 430 000 + 243 000 lb·in³.
    assertThat(new SidePush(10, 96, 0, 90).swayIn(1e6)).isCloseTo(2.673, within(1e-9));
    assertThat(new SidePush(0, 80, 90).swayIn(1e6)).isCloseTo(80 * 729_000 / 8e6, within(1e-9));
  }
}
