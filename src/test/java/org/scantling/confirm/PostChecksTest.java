package org.scantling.confirm;

import static org.scantling.confirm.SmallArbour.assertWorked;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Checked;

/**
 * A 4x4, 90 in out of the ground, held there and free at the top: le = 2.1 · 90 = 189 in.
 *
 * <p>Wind across: 22.95 lb at 91.625 in and 110.02 lb spread; along: 39.736 lb at 94.25 in and
 * 53.22 lb spread (see {@link WindOnWalkTest}). Header reactions, lb: permanent 3.5 · 12.833 + 36 ·
 * 0.28356 = 55.125, wind down 122.5, a person on the tip 327.31 (see {@link HeaderChecksTest}); the
 * post itself 90 · 0.28356 = 25.52.
 */
class PostChecksTest {
  private final Map<String, Checked> checks = checks(1);

  private static Map<String, Checked> checks(int housedFaces) {
    PostChecks posts =
        new PostChecks(
            SmallArbour.headers(SmallArbour.geometry()),
            SmallArbour.FOUR_BY_FOUR,
            SmallArbour.standing(housedFaces),
            SmallArbour.LIMITS,
            SmallArbour.SOURCES);
    return SmallArbour.byId(posts.of(SmallArbour.FOUR_BY_FOUR));
  }

  @Test
  void it_is_too_slender_by_the_standard() {
    // NDS 2018, 3.7.1.4: 189/3.5 = 54 against 50.
    assertWorked(checks.get("post.slenderness"), "D", 54, 50);
  }

  @Test
  void buckling_leaves_a_tenth_of_its_strength_and_that_is_enough() {
    // F_cE = 0.822 · 459 000/54² = 129.39 psi; Fc* = 1450 · 1.25 · 0.8 = 1450 psi; ratio 0.08923;
    // C_P = 1.08923/1.6 − √(0.68077² − 0.08923/0.8) = 0.08755.
    // (382.44 + 25.52)/12.25 = 33.303 psi.
    assertWorked(checks.get("post.compression"), "D+Lr", 33.303, 126.95);
  }

  @Test
  void the_wind_across_bends_it_at_the_ground() {
    // 0.6 · 7053.6/7.1458; Fb' = 1100 · 1.6.
    assertWorked(checks.get("post.bending"), "D+0.6W", 592.26, 1760);
  }

  @Test
  void load_and_wind_together_are_worst_with_a_person_on_the_top() {
    // 55.125 + 0.45 · 122.5 + 0.75 · 327.31 + 25.52 = 381.25 lb, fc = 31.123 psi; Fc' at C_D 1.6:
    // 127.51.
    // fc/F_cE = 0.24054; fb = 0.45 · 7053.6/7.1458 = 444.19; offset d/6 adds fc (1 + 0.234 ·
    // 0.24054).
    // (31.123/127.51)² + (444.19 + 32.87)/(1760 · 0.75946) = 0.05958 + 0.35691.
    assertWorked(checks.get("post.combined"), "D+0.75(0.6W)+0.75Lr", 0.41649, 1);
  }

  @Test
  void it_sways_less_than_a_sixtieth_of_its_height() {
    // 22.95 · 90³/3 + 22.95 · 1.625 · 90²/2 + 110.019 · 90³/8 = 1.57533e7 lb·in³; times 0.6 over EI
    // 1.57566e7 is 0.59988 in; grown by 1/(1 − 12.583/129.39) to 0.6645 in.
    assertWorked(checks.get("post.drift"), "D+0.6W", 0.66450, 1.5);
  }

  /**
   * NDS 2018, 3.9.2 with 15.4.1, on the net section; 24 in up, wind along: 39.736 · 70.25 + 53.217
   * · 66²/180 = 4079.3 in·lb. Load 55.125 + 0.45 · 122.5 + 0.75 · 327.31 + 66 · 0.28356 = 374.45
   * lb; the whole post, fc/F_cE = 30.567/129.39 = 0.23624. Left are 2.5 by 3.5 in, 8.75 in²: fc =
   * 42.794 psi, fb = 0.45 · 4079.3/3.6458 = 503.50 psi. The load misses the middle of that by a
   * sixth of the post and half an inch, 1.0833 in: 6 e/d = 2.6.
   */
  @Test
  void where_a_rail_is_housed_pressure_its_offset_and_wind_add_up() {
    // (42.794/127.51)² + (503.50 + 42.794 · 2.6 · 1.05528)/(1760 · 0.76376) = 0.11264 + 0.46192.
    assertWorked(checks.get("post.rail-notch"), "D+0.75(0.6W)+0.75Lr", 0.57456, 1);
  }

  @Test
  void housings_in_both_faces_leave_an_inch_and_a_half_about_the_middle() {
    // 1.5 by 3.5 in, 5.25 in²: fc = 71.323 psi; fb = 0.45 · 4079.3/1.3125 = 1398.6 psi; the offset
    // is
    // a sixth of the post alone, 6 · 0.58333/1.5 = 2.3333: a post between two bays fails.
    // (71.323/127.51)² + (1398.6 + 71.323 · 2.3333 · 1.05528)/(1760 · 0.76376) = 0.31289 + 1.17112.
    assertWorked(checks(2).get("post.rail-notch"), "D+0.75(0.6W)+0.75Lr", 1.48401, 1);
  }
}
