package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.mechanics.FrameLoad;
import org.scantling.mechanics.FrameResult;

/**
 * The portal of two posts 96 in high and 144 in apart with 24 in legs, pushed alike at both posts.
 * The push is then the same turned about the middle, so both feet take the same share and statics
 * alone gives every force; the expected values are worked by hand in the comments.
 */
class BracedPlaneTest {
  private static final double PUSH_LB = 100;
  private static final double HEIGHT_IN = 96;
  private static final double SPAN_IN = 144;
  private static final double LEG_IN = 24;

  private static BracedPlane portal(List<Double> posts) {
    BracedTimbers timbers =
        new BracedTimbers(
            BracedExample.timber(5.5, 5.5, 1),
            BracedExample.timber(1.5, 9.25, 2),
            BracedExample.timber(1.5, 7.25, 1),
            BracedExample.timber(3.5, 3.5, 1),
            LEG_IN);
    return new BracedPlane(
        new BracedPlane.Outline(posts, 12, HEIGHT_IN, LEG_IN, List.of()),
        timbers,
        timbers.header());
  }

  /** Bays and rows of 96 in; between two legs a sixteenth has to be left. */
  @Test
  void braces_find_room_where_a_sixteenth_is_left_between_their_heads() {
    Geometry geometry = BracedExample.geometry(2);

    assertThat(BracedWalk.fits(geometry, 47.9)).isTrue();
    assertThat(BracedWalk.fits(geometry, 48 - 1.0 / 32)).isFalse();
    assertThat(BracedWalk.fits(geometry, 47.9975)).isFalse();
    assertThat(BracedWalk.fits(geometry, 0)).isFalse();
  }

  private static BracedPlane portal() {
    return portal(List.of(0.0, SPAN_IN));
  }

  private static FrameResult under(BracedPlane plane, List<FrameLoad> loads) {
    return plane.frame().solve(List.of(loads)).get(0);
  }

  @Test
  void a_push_at_the_tops_puts_the_moment_over_the_leg_into_the_braces() {
    BracedPlane portal = portal();
    FrameResult result = under(portal, portal.push(new SidePush(PUSH_LB, 0, HEIGHT_IN)));
    // Moment about the top of one post: foot 100 lb x 96 in = horizontal part of the brace x 24 in.
    double braceLb = PUSH_LB * HEIGHT_IN / LEG_IN * Math.sqrt(2);
    assertThat(result.member("brace.0.right").axialLb(0)).isCloseTo(braceLb, within(1e-6));
    assertThat(result.member("brace.1.left").axialLb(0)).isCloseTo(-braceLb, within(1e-6));
  }

  @Test
  void a_push_spread_over_the_posts_works_the_braces_half_as_hard() {
    BracedPlane portal = portal();
    FrameResult result = under(portal, portal.push(new SidePush(0, PUSH_LB, HEIGHT_IN)));
    // The foot still takes 100 lb, but the load itself turns back by 100 lb x 48 in.
    double braceLb = PUSH_LB * HEIGHT_IN / 2 / LEG_IN * Math.sqrt(2);
    assertThat(result.member("brace.0.right").axialLb(0)).isCloseTo(braceLb, within(1e-6));
  }

  @Test
  void feet_take_the_push_and_the_tipping_couple() {
    BracedPlane portal = portal();
    FrameResult result = under(portal, portal.push(new SidePush(PUSH_LB, 0, HEIGHT_IN)));
    assertThat(result.reaction("foot.0").xLb()).isCloseTo(-PUSH_LB, within(1e-6));
    assertThat(result.reaction("foot.0").momentInLb()).isZero();
    // 200 lb at 96 in over 144 in.
    assertThat(result.reaction("foot.0").yLb()).isCloseTo(-133.333333, within(1e-5));
    assertThat(result.reaction("foot.1").yLb()).isCloseTo(133.333333, within(1e-5));
  }

  @Test
  void a_post_is_bent_most_where_its_brace_meets_it_and_its_top_is_pulled_off_the_beam() {
    BracedPlane portal = portal();
    FrameResult result = under(portal, portal.push(new SidePush(PUSH_LB, 0, HEIGHT_IN)));
    BracedPostForces windward = BracedPostForces.of(result, 0);
    BracedPostForces leeward = BracedPostForces.of(result, 1);
    // 100 lb x 72 in; shear above the brace 7200 / 24.
    assertThat(windward.kneeMomentInLb()).isCloseTo(7200, within(1e-5));
    assertThat(windward.momentInLb()).isCloseTo(7200, within(1e-5));
    assertThat(windward.shearLb()).isCloseTo(300, within(1e-6));
    assertThat(windward.headSideLb()).isCloseTo(300, within(1e-6));
    // Upright part of a brace 400 lb; the foot below has 133 lb the other way.
    assertThat(windward.headPullLb()).isCloseTo(133.333333 - 400, within(1e-5));
    assertThat(leeward.headPullLb()).isCloseTo(400 - 133.333333, within(1e-5));
  }

  @Test
  void sway_is_what_virtual_work_of_bending_gives_and_a_little_more_for_stretching() {
    BracedPlane portal = portal();
    FrameResult result = under(portal, portal.push(new SidePush(PUSH_LB, 0, HEIGHT_IN)));
    double post = 1.6e6 * 5.5 * 5.5 * 5.5 * 5.5 / 12;
    double beam = 1.6e6 * 3 * 9.25 * 9.25 * 9.25 / 12;
    double postInLb = PUSH_LB * (HEIGHT_IN - LEG_IN);
    double beamInLb = PUSH_LB * HEIGHT_IN * (1 - 2 * LEG_IN / SPAN_IN);
    // Triangles of moment: along the whole post, and along half the beam on either side.
    double work =
        2 * postInLb * postInLb * HEIGHT_IN / (3 * post)
            + beamInLb * beamInLb * SPAN_IN / (3 * beam);
    double bentIn = work / (2 * PUSH_LB);
    double swayIn = result.movement(portal.top(0)).xIn();
    assertThat(swayIn).isGreaterThan(bentIn).isCloseTo(bentIn, within(0.05 * bentIn));
  }

  @Test
  void weight_spreads_nothing_sideways_that_the_other_post_does_not_give_back() {
    BracedPlane portal = portal();
    FrameResult result = under(portal, portal.beam().everywhere(8));
    double each = 8 * (SPAN_IN + 24) / 2;
    assertThat(result.reaction("foot.0").yLb()).isCloseTo(each, within(1e-6));
    assertThat(result.reaction("foot.0").xLb())
        .isPositive()
        .isCloseTo(-result.reaction("foot.1").xLb(), within(1e-6));
  }

  @Test
  void a_row_has_a_brace_on_every_side_of_a_post_that_has_a_bay() {
    assertThat(portal(List.of(0.0, 60.0, 120.0)).whole().braces())
        .containsExactly("brace.0.right", "brace.1.left", "brace.1.right", "brace.2.left");
  }

  @Test
  void in_a_row_all_feet_together_take_the_push_and_none_takes_a_moment() {
    BracedPlane row = portal(List.of(0.0, 60.0, 120.0, 180.0));
    FrameResult result = under(row, row.push(new SidePush(PUSH_LB, 0, HEIGHT_IN)));
    double total = 0;
    for (int post = 0; post < row.postCount(); post++) {
      total += result.reaction(BracedPlane.foot(post)).xLb();
      assertThat(result.reaction(BracedPlane.foot(post)).momentInLb()).isZero();
    }
    assertThat(total).isCloseTo(-4 * PUSH_LB, within(1e-6));
  }

  @Test
  void legs_that_meet_in_the_bay_or_reach_the_ground_are_refused() {
    assertThatThrownBy(() -> portal(List.of(0.0, 48.0)))
        .hasMessage("posts 48.0 in apart must leave room for two legs of 24.0 in");
    assertThatThrownBy(() -> new BracedPlane.Outline(List.of(0.0, 90.0), 0, 24, 24, List.of()))
        .hasMessage("a height of 24.0 in must be more than a leg of 24.0 in");
  }
}
