package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.confirm.SmallArbour.assertWorked;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.design.Splice;
import org.scantling.loads.LoadCombination;
import org.scantling.reasons.Checked;

/**
 * Bay L = 42 in, tails 15 in, crossbeams at the posts, the quarter points and 10.5 in out on each
 * tail.
 *
 * <p>Each crossbeam brings (see {@link CrossbeamChecksTest}) 5.833 dead + 7 vines = 12.833 lb
 * permanent, 35 live, 28 snow, 35 wind down, 31.5 wind up, or a person of 241.18 lb. Own weight
 * 12.25 in² · 40/1728 = 0.28356 lb/in.
 *
 * <p>A load P on each crossbeam: over the post 10.5 P, at mid-bay 21 P − 10.5 P. Own weight w:
 * 112.5 w and 220.5 w − 112.5 w.
 */
class HeaderChecksTest {
  private static final Geometry GEOMETRY = SmallArbour.geometry();
  private final Map<String, Checked> checks =
      SmallArbour.byId(SmallArbour.headers(GEOMETRY).of(SmallArbour.FOUR_BY_FOUR));

  /** As deep as broad, so C_L = 1: 1100 · 1.25. */
  private static final double BENDING_PSI = 1375;

  @Test
  void a_person_at_mid_bay_bends_it_most() {
    // 241.18 · 42/4 + 10.5 · 12.833 + 108 · 0.28356 = 2697.7 in·lb over 3.5³/6 = 7.1458 in³.
    assertWorked(checks.get("header.bending"), "D+Lr", 377.53, BENDING_PSI);
  }

  @Test
  void a_person_on_the_tip_bends_what_the_notch_over_the_post_leaves() {
    // 241.18 · 15 + 10.5 · 12.833 + 112.5 · 0.28356 = 3784.3 in·lb over 3.5 · 3²/6 = 5.25 in³.
    assertWorked(checks.get("header.seat-bending"), "D+Lr", 720.82, BENDING_PSI);
  }

  @Test
  void the_tail_under_a_person_shears_most() {
    // 241.18 + 12.833 + 15 · 0.28356 = 258.26 lb; beside the post inside it is 256.33 lb.
    assertWorked(checks.get("header.shear"), "D+Lr", 31.624, 212.19);
    assertWorked(checks.get("header.notched-shear"), "D+Lr", 258.26, 1091.25);
  }

  @Test
  void the_seat_is_crushed_by_a_person_on_the_near_tip() {
    // 241.18 (1 + 15/42) + 3.5 · 12.833 + 36 · 0.28356 = 382.44 lb on 3.5² in².
    assertWorked(checks.get("header.bearing"), "D+Lr", 31.219, 419.11);
  }

  @Test
  void a_header_broader_than_its_post_bears_on_the_post_alone() {
    Material broad = SmallArbour.material(5.5, 5.5);
    Geometry geometry = SmallArbour.geometry(1, new Geometry.Headers(false, 5.5, 5.5, 13.25, 0.5));
    Checked bearing =
        SmallArbour.byId(SmallArbour.headers(geometry).of(broad)).get("header.bearing");
    // Crossbeam tail 5.5/2 + 12.25 = 15 in: half-length 49 in, so dead 49 · 0.12153 + vines
    // 2 · 10.5 · 49/144 = 13.101 lb and person 200 (1 + 15/68) = 244.12 lb.
    // 244.12 · 57/42 + 3.5 · 13.101 + 36 · 30.25 · 40/1728 = 402.36 lb on 3.5 · 3.5 in².
    assertWorked(bearing, "D+Lr", 32.846, 419.11);
  }

  @Test
  void sag_counts_the_bay_loaded_alone() {
    // EI = 1.26e6 · 3.5⁴/12 = 1.57566e7. Three loads at the quarter points: 19 P L³/384 = 3665.8 P;
    // loads on the tails take 10.5 L²/8 = 2315.3 P off; own weight 40 517 w − 24 806 w.
    // D: (12.833 · 1350.6 + 0.28356 · 15 711)/EI = 0.0013827 in; live 35 · 3665.8/EI = 0.0081428
    // in.
    assertWorked(checks.get("header.deflection-live"), "D+Lr", 0.0081428, 42 / 240.0);
    assertWorked(checks.get("header.deflection-total"), "D+Lr", 0.0109083, 42 / 180.0);
  }

  @Test
  void tails_lift_while_the_bay_alone_is_loaded() {
    // End slope of the three loads 5 P L²/32 = 275.63 P, so the tip rises 15 · 275.63 = 4134.4 P.
    // 35 · 4134.4/EI = 0.0091837 in; D: (12.833 · 192.94 + 0.28356 · 4539.4)/EI = 0.00023884 in up.
    assertWorked(checks.get("header.tail-deflection-live"), "D+Lr", 0.0091837, 30 / 240.0);
    assertWorked(checks.get("header.tail-deflection-total"), "D+Lr", 0.0096614, 30 / 180.0);
  }

  @Test
  void of_a_pair_one_board_is_checked_for_the_whole() {
    Geometry geometry = SmallArbour.geometry(1, new Geometry.Headers(true, 1.5, 5.5, 13.25, 0));
    Material one = SmallArbour.material(1.5, 5.5);
    Material pair = new Material(one.section(), 2, one.reference(), one.adjustments(), 40);
    List<Checked> both = SmallArbour.headers(geometry).of(pair);
    Checked bending = SmallArbour.byId(both).get("header.bending");
    // Crossbeam tail 15.5 in: dead and vines 49.5 (0.12153 + 0.14583) = 13.234 lb, person 245.59
    // lb;
    // one board 8.25 in² · 40/1728 = 0.19097 lb/in.
    // 245.59 · 10.5 + 10.5 · 13.234 + 108 · 0.19097 = 2738.3 in·lb over 1.5 · 5.5²/6 = 7.5625 in³.
    assertThat(bending.check().demand()).isCloseTo(362.09, within(0.1));
    assertThat(both).noneMatch(each -> each.id().equals("header.bearing"));
  }

  @Test
  void over_two_bays_with_long_tails_the_end_post_takes_most() {
    // Three moments, person on the tip: M1 = −15 P, M2 = 15/4 P, so R1 = P (1 + 18.75/42) = 348.84
    // lb.
    // Permanent: M1 = M3 = −166.65; 4 M2 = −12 (5 · 12.833 · 42/32 + 0.28356 · 42²/24) + 2 ·
    // 166.65,
    // M2 = −231.86 in·lb; R1 = 17.087 + 12.833 + 25.205 − 65.21/42 = 53.57 lb.
    assertThat(heaviestLb(13.25)).isCloseTo(402.41, within(0.05));
  }

  @Test
  void over_two_bays_with_short_tails_the_middle_post_takes_a_person_right_over_it() {
    // Tails of 1.75 in without crossbeams: M1 = −0.434, 4 M2 = −1260.7 + 0.87, M2 = −314.96 in·lb.
    // Middle post 12.833 + 2 (25.205 + 314.53/42) = 78.22 lb and the person 241.18 lb; the end post
    // has
    // 31.05 lb and P (1 + (1.75 + 0.4375)/42) = 253.7 lb.
    assertThat(heaviestLb(0)).isCloseTo(319.40, within(0.05));
  }

  @Test
  void two_bays_hog_most_over_the_middle_post_while_both_tails_are_empty() {
    // Live 40 psf, 140 lb on each crossbeam. Two bays under P at posts and quarter points:
    // Clapeyron
    // with 6 A x/L = 15/16 P L² a bay gives M2 = −15/32 P L = −2756.3 in·lb; a loaded tail, 10.5 P
    // over the end post, would take 5.25 P off it.
    // Permanent −10.5 · 12.833 − 112.5 w = −166.65 over the end posts, so 4 M2 = −12 (5 · 12.833 ·
    // 42/32 + 0.28356 · 42²/24) + 333.3, M2 = −231.86. Over 3.5 · 3²/6 = 5.25 in³.
    TopLoads heavy = new TopLoads(2, 40, 0, 8, 10, 9);
    Geometry two = SmallArbour.geometry(2, new Geometry.Headers(false, 3.5, 3.5, 13.25, 0.5));
    List<Checked> worked =
        new HeaderChecks(
                two, SmallArbour.TWO_BY_FOUR, heavy, SmallArbour.LIMITS, SmallArbour.SOURCES)
            .of(SmallArbour.FOUR_BY_FOUR);
    Checked hogging = SmallArbour.byId(worked).get("header.seat-bending");
    assertWorked(hogging, "D+Lr", (2756.25 + 231.86) / 5.25, BENDING_PSI);
  }

  @Test
  void a_person_on_the_crossbeam_where_all_else_bends_it_most_bends_it_more_than_at_mid_bay() {
    // Crossbeams at 14 and 28 in of two bays of 42, vines 40 psf: 40 · 14/12 · 4 + 5.833 = 192.5 lb
    // each. Two equal spans, loads at their thirds: R1 = 2/3 · 192.5, at 14 in 1796.7 in·lb (AISC
    // beam diagrams, from memory). Own weight 3/8 · 0.28356 · 42 · 14 − 0.28356 · 14²/2 = 34.7.
    // Person at a = 14: P a b (4 L² − a (L + a))/4 L³ = 241.18 · 14 · 28 · 6272/296352 = 2000.9.
    // All of it 3832.3 over 3.5³/6 in³; at mid-bay 1347.5 + 31.3 + 2057.6.
    TopLoads leafy = new TopLoads(40, 0, 200, 0, 0, 0);
    Geometry two =
        new Geometry(
            new Geometry.Plan(68, 42, 2),
            new Geometry.Posts(3.5, 90),
            new Geometry.Headers(false, 3.5, 3.5, 0, 0.5),
            new Geometry.Crossbeams(3, 1.5, 3.5, 12.25, 0.5, 1.5));
    Checked bending =
        SmallArbour.byId(
                new HeaderChecks(
                        two,
                        SmallArbour.TWO_BY_FOUR,
                        leafy,
                        SmallArbour.LIMITS,
                        SmallArbour.SOURCES)
                    .of(SmallArbour.FOUR_BY_FOUR))
            .get("header.bending");
    assertWorked(bending, "D+Lr", 536.3, BENDING_PSI);
  }

  @Test
  void a_person_beside_the_middle_post_shears_it_most() {
    // 1.75 in before the middle post: M2 = −P a (L² − a²)/4 L² = −241.18 · 40.25 · 143.94/7056 =
    // −198.03 in·lb, V = 241.18 · 40.25/42 + 198.03/42 = 235.85 lb; beside the end post 228.6 lb.
    // Permanent (see above) 25.205 + 314.53/42 = 32.69 lb. 1.5 · 268.54/12.25.
    Geometry two = SmallArbour.geometry(2, new Geometry.Headers(false, 3.5, 3.5, 0, 0.5));
    Checked shear =
        SmallArbour.byId(SmallArbour.headers(two).of(SmallArbour.FOUR_BY_FOUR)).get("header.shear");
    assertWorked(shear, "D+Lr", 32.882, 212.19);
  }

  @Test
  void a_person_beside_a_cut_end_shears_the_piece_most() {
    // One bay by itself: 241.18 · 40.25/42 = 231.13 lb and 25.205 lb; at mid-bay only 120.59.
    Geometry two = SmallArbour.geometry(2, new Geometry.Headers(false, 3.5, 3.5, 0, 0.5));
    Checked shear =
        SmallArbour.byId(
                SmallArbour.headers(two).inPieces(Splice.bayByBay(2)).of(SmallArbour.FOUR_BY_FOUR))
            .get("header.shear");
    assertWorked(shear, "D+Lr", 1.5 * 256.34 / 12.25, 212.19);
  }

  private static double heaviestLb(double overhangIn) {
    Geometry two = SmallArbour.geometry(2, new Geometry.Headers(false, 3.5, 3.5, overhangIn, 0.5));
    return SmallArbour.headers(two).onPosts(SmallArbour.FOUR_BY_FOUR).stream()
        .filter(load -> load.combination() == LoadCombination.DEAD_LIVE)
        .mapToDouble(HeaderChecks.PostLoad::downLb)
        .max()
        .orElseThrow();
  }

  @Test
  void a_person_on_one_tail_lifts_the_next_post_and_vines_do_not_hold_it() {
    HeaderChecks.PostLoad lifted =
        SmallArbour.headers(GEOMETRY).onPosts(SmallArbour.FOUR_BY_FOUR).stream()
            .filter(load -> load.combination() == LoadCombination.DEAD_LIVE)
            .max(Comparator.comparingDouble(HeaderChecks.PostLoad::upLb))
            .orElseThrow();
    // 241.18 · 15/42 = 86.13 lb, less timber 3.5 · 5.833 + 36 · 0.28356 = 30.63 lb.
    assertThat(lifted.upLb()).isCloseTo(55.51, within(0.01));
  }

  @Test
  void wind_from_below_lifts_against_six_tenths_of_the_timber() {
    HeaderChecks.PostLoad lifted =
        SmallArbour.headers(GEOMETRY).onPosts(SmallArbour.FOUR_BY_FOUR).stream()
            .filter(load -> load.combination() == LoadCombination.UPLIFT)
            .findFirst()
            .orElseThrow();
    // 0.6 (3.5 · 31.5) − 0.6 · 30.625 = 66.15 − 18.375.
    assertThat(lifted.upLb()).isCloseTo(47.775, within(0.001));
  }
}
