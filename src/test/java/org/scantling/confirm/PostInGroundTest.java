package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.confirm.SmallArbour.assertWorked;

import org.junit.jupiter.api.Test;
import org.scantling.reasons.Checked;

/**
 * The small structure's post; 0.6 · 132.97 = 79.78 lb at 53.05 in (see {@link FootingWorkTest}).
 */
class PostInGroundTest {
  private static final double DUG_IN = 36;

  private static Checked shear(boolean concrete) {
    return SmallArbour.byId(
            new PostInGround(
                    SmallArbour.foot(concrete),
                    SmallArbour.standing(1),
                    DUG_IN,
                    SmallArbour.LIMITS,
                    SmallArbour.SOURCES)
                .of(SmallArbour.FOUR_BY_FOUR))
        .get("post.shear");
  }

  @Test
  void the_ground_shears_a_post_in_tamped_fill_three_times_harder_than_the_wind() {
    // 35.765 in deep it turns at 24.77 in, where 79.78 − 3.3429 z²/2 + 0.13497 z³/3 = −261.99 lb:
    // 1.5 · 261.99/12.25 psi; Fv' = 175 · 1.6 · 0.97.
    assertWorked(shear(false), "D+0.6W", 32.081, 271.6);
  }

  @Test
  void a_collar_of_concrete_takes_the_soil_s_push_for_it() {
    assertWorked(shear(true), "D+0.6W", 9.7691, 271.6);
  }

  private static PostInGround posts(boolean concrete) {
    return new PostInGround(
        SmallArbour.foot(concrete),
        SmallArbour.standing(1),
        DUG_IN,
        SmallArbour.LIMITS,
        SmallArbour.SOURCES);
  }

  @Test
  void a_post_in_tamped_fill_is_bent_hardest_some_way_down() {
    // The push is taken up where 79.78 − 3.3429 z²/2 + 0.13497 z³/3 = 0, at z = 7.768 in:
    // 79.78·(53.05 + 7.768) − 3.3429·7.768³/6 + 0.13497·7.768⁴/12 = 4632 lb-in, of 4232 at grade.
    SidePush push = SmallArbour.standing(1).across();
    assertThat(posts(false).bendingRatio(push)).isCloseTo(4632 / 4232.3, within(0.0005));
    assertThat(posts(true).bendingRatio(push)).isEqualTo(1);
  }

  @Test
  void the_checks_of_a_post_held_by_the_ground_count_it() {
    PostChecks free =
        new PostChecks(
            SmallArbour.headers(SmallArbour.geometry()),
            SmallArbour.FOUR_BY_FOUR,
            SmallArbour.standing(1),
            SmallArbour.LIMITS,
            SmallArbour.SOURCES);
    double above = bending(free);
    assertThat(bending(free.heldBy(posts(true)))).isEqualTo(above);
    assertThat(bending(free.heldBy(posts(false))) / above).isCloseTo(1.0944, within(0.0005));
  }

  private static double bending(PostChecks checks) {
    return SmallArbour.byId(checks.of(SmallArbour.FOUR_BY_FOUR))
        .get("post.bending")
        .check()
        .demand();
  }

  @Test
  void the_turning_of_the_foot_counts_in_the_sway() {
    // Stiff foot 36 in deep, n_h 24 lb/in³, 79.78 lb at 53.05 in (IBC 1806.3.4 lets it move):
    // z0 = 36 (108 + 212.2)/(144 + 318.3) = 24.934 in;
    // θ = 79.78/[24 (24.934 · 648 − 15552)] = 0.005491; 0.005491 · (24.934 + 90) = 0.6311 in.
    // With 0.59988 in of bending, grown by 1/(1 − 12.583/129.39) to 0.6645: 1.2956 in.
    PostChecks free =
        new PostChecks(
            SmallArbour.headers(SmallArbour.geometry()),
            SmallArbour.FOUR_BY_FOUR,
            SmallArbour.standing(1),
            SmallArbour.LIMITS,
            SmallArbour.SOURCES);
    assertWorked(drift(free.heldBy(posts(false))), "D+0.6W", 1.2956, 1.5);
    assertWorked(drift(free), "D+0.6W", 0.66450, 1.5);
  }

  private static Checked drift(PostChecks checks) {
    return SmallArbour.byId(checks.of(SmallArbour.FOUR_BY_FOUR)).get("post.drift");
  }

  @Test
  void the_hole_is_as_deep_as_the_sway_asks() {
    // Of 1.5 in bending leaves 1.5 − 0.6645 = 0.8355 in; d is where
    // 957.4 (159.15 + 2d)(z0 + 90)/(24 d⁴) comes to that: 33.2 in.
    FootSway sway = sway(SmallArbour.foot(false));
    double depthIn = sway.depthIn(1);
    assertThat(depthIn).isCloseTo(33.2, within(0.1));
    assertThat(sway.moved(depthIn).turnedIn()).isCloseTo(0.8355, within(0.001));
    assertThat(sway.depthIn(1.2)).isLessThan(depthIn);
    assertThat(sway.depthIn(0.4)).isInfinite();
  }

  @Test
  void the_half_inch_that_the_code_presumes_is_two_and_a_third_at_the_header() {
    // 0.5 · (24.934 + 90)/24.934.
    FootSway.Moved moved = sway(SmallArbour.foot(false)).moved(DUG_IN);
    assertThat(moved.topIn(0.5)).isCloseTo(2.3047, within(0.001));
    assertThat(moved.topIn(moved.groundIn())).isCloseTo(moved.turnedIn(), within(1e-9));
  }

  @Test
  void rock_lets_no_foot_turn() {
    FootingWork.Foot soil = SmallArbour.foot(true);
    FootingWork.Foot rock =
        new FootingWork.Foot(
            true, 3.5, soil.soil(), soil.isolatedFactor(), soil.weights(), 0, soil.gripRatio());
    assertThat(sway(rock).depthIn(1)).isZero();
    assertThat(sway(rock).moved(DUG_IN).turnedIn()).isZero();
  }

  private static FootSway sway(FootingWork.Foot foot) {
    PostChecks posts =
        new PostChecks(
            SmallArbour.headers(SmallArbour.geometry()),
            SmallArbour.FOUR_BY_FOUR,
            SmallArbour.standing(1),
            SmallArbour.LIMITS,
            SmallArbour.SOURCES);
    return new FootSway(foot, posts, SmallArbour.FOUR_BY_FOUR);
  }

  @Test
  void a_post_that_nothing_pushes_is_not_sheared() {
    SidePush still = new SidePush(0, 0, 90);
    PostInGround posts =
        new PostInGround(
            SmallArbour.foot(false),
            new PostChecks.Standing(still, still, 0, 0, 1),
            DUG_IN,
            SmallArbour.LIMITS,
            SmallArbour.SOURCES);
    assertThat(posts.bendingRatio(still)).isEqualTo(1);
    assertThat(posts.of(SmallArbour.FOUR_BY_FOUR))
        .singleElement()
        .satisfies(shear -> assertThat(shear.check().demand()).isCloseTo(0, within(1e-12)));
  }
}
