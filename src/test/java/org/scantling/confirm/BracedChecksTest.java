package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.FrameResult;
import org.scantling.reasons.Checked;

class BracedChecksTest {
  private static final double CALM_LB = 0;

  private static Checked check(List<Checked> checks, String id) {
    return checks.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<Checked> braces(BracedWalk walk) {
    return new BracedChecks(walk, BracedExample.LIMITS, BracedExample.RULES, BracedExample.SOURCES)
        .list();
  }

  private static List<Checked> posts(BracedWalk walk, double windLb) {
    return new BracedPostChecks(
            walk,
            BracedExample.wind(windLb),
            BracedExample.LIMITS,
            BracedExample.RULES,
            BracedExample.SOURCES)
        .list();
  }

  @Test
  void the_brace_force_of_uplift_is_that_of_hand_statics_with_the_sway_on_top() {
    BracedWalk walk = BracedExample.walk(1, 200);
    // Post 84 and header 7.5 in, less two seats of 0.5 in, and half of the crossbeam's 7.25 in.
    double heightIn = 84 + 7.5 - 1 + 3.625;
    assertThat(walk.across().plane().heightIn()).isCloseTo(heightIn, within(1e-9));
    BracedCase lifted =
        walk.across().cases().stream()
            .filter(each -> each.combination() == LoadCombination.UPLIFT)
            .findFirst()
            .orElseThrow();
    // Half of 200 lb at the top and half spread, times 0.6, about the top: (60 + 60 / 2) x height.
    double pushedLb = 90 * heightIn / 24 * Math.sqrt(2) * lifted.sway().amplifierFactor();
    double stillLb = lifted.still().member("brace.0.right").axialLb(0);
    double allLb = lifted.all().member("brace.0.right").axialLb(0);
    assertThat(allLb - stillLb).isCloseTo(pushedLb, within(1e-6 * pushedLb));
  }

  @Test
  void all_weight_and_load_ends_in_the_feet() {
    BracedWalk walk = BracedExample.walk(2, CALM_LB);
    BracedCase snow =
        walk.along().cases().stream()
            .filter(each -> each.combination() == LoadCombination.DEAD_SNOW)
            .findFirst()
            .orElseThrow();
    double feetLb = 0;
    for (int post = 0; post < 3; post++) {
      feetLb += snow.all().reaction(BracedPlane.foot(post)).yLb();
    }
    // 13 crossbeams, none on the tails: 14.75 in less the margin is under the spacing of 16 in.
    double halfIn = (96 + 2 * (2.75 + 12)) / 2;
    double crossbeamLb = halfIn * 1.5 * 7.25 * 35 / 1728;
    double onEachLb = crossbeamLb + (2 + 8) * 16 * halfIn / 144;
    double headerLb = (2 * 96 + 2 * 14.75) * 5.5 * 7.5 * 35 / 1728;
    double postsLb = 3 * walk.along().plane().heightIn() * 5.5 * 5.5 * 35 / 1728;
    assertThat(feetLb).isCloseTo(13 * onEachLb + headerLb + postsLb, within(1e-6 * feetLb));
  }

  @Test
  void every_check_of_brace_and_post_has_its_id_and_the_wind_governs_the_bending() {
    BracedWalk walk = BracedExample.walk(2, 300);
    assertThat(braces(walk)).extracting(Checked::id).contains("brace.axial", "brace.slenderness");
    List<Checked> posts = posts(walk, 300);
    assertThat(posts)
        .extracting(Checked::id)
        .contains(
            "post.compression",
            "post.slenderness",
            "post.bending",
            "post.combined",
            "post.shear",
            "post.drift",
            "brace.post-bending",
            "brace.sway");
    assertThat(check(posts, "brace.post-bending").combination()).contains("W");
  }

  @Test
  void a_row_of_many_bays_works_its_timbers_as_hard_as_one_of_eight() {
    // Solved whole with 6 and with 8 bays; with 9 and with 40 as one of 8 that bears as much a
    // post.
    List<Checked> eight = posts(BracedExample.walk(8, 300), 300);
    for (int bays : List.of(6, 9, 40)) {
      List<Checked> many = posts(BracedExample.walk(bays, 300), 300);
      assertThat(many)
          .allSatisfy(
              each ->
                  assertThat(each.check().ratio())
                      .as(each.id())
                      .isCloseTo(check(eight, each.id()).check().ratio(), withinPercentage(0.5)));
    }
  }

  @Test
  void
      a_person_at_the_far_tip_works_a_row_as_one_at_the_near_tip_does_in_wind_from_the_other_end() {
    BracedPlane row = BracedExample.walk(3, 300).along().plane();
    double tailIn = BracedExample.geometry(3).headerTailIn();
    List<FrameResult> solved =
        row.frame()
            .solve(
                List.of(
                    row.push(new SidePush(150, 150, 84)),
                    List.of(row.beam().point(-tailIn, 200)),
                    List.of(row.beam().point(3 * 96 + tailIn, 200))));

    double nearInLb = hardest(row, FrameResult.combine(solved, 1, 1, 0));
    assertThat(hardest(row, FrameResult.combine(solved, -1, 0, 1)))
        .isCloseTo(nearInLb, withinPercentage(1e-6));
    assertThat(hardest(row, FrameResult.combine(solved, 1, 0, 1)))
        .isNotCloseTo(nearInLb, withinPercentage(0.1));
  }

  private static double hardest(BracedPlane row, FrameResult result) {
    return row.beam().pieces().stream()
        .mapToDouble(piece -> Math.abs(result.member(piece).largestMoment().amount()))
        .max()
        .orElseThrow();
  }

  @Test
  void a_brace_is_as_slender_as_its_sloping_length_over_its_thin_side() {
    Checked slender = check(braces(BracedExample.walk(1, 100)), "brace.slenderness");
    assertThat(slender.check().demand()).isCloseTo(24 * Math.sqrt(2) / 3.5, within(1e-9));
  }

  @Test
  void a_bored_post_is_bent_by_the_moment_over_what_the_bolt_hole_leaves() {
    BracedWalk walk = BracedExample.walk(1, 200);
    double mostInLb = 0;
    for (BracedCase each : walk.across().cases()) {
      mostInLb = Math.max(mostInLb, BracedPostForces.of(each.all(), 0).kneeMomentInLb());
      mostInLb = Math.max(mostInLb, BracedPostForces.of(each.all(), 1).kneeMomentInLb());
    }
    for (BracedCase each : walk.along().cases()) {
      mostInLb = Math.max(mostInLb, BracedPostForces.of(each.all(), 0).kneeMomentInLb());
      mostInLb = Math.max(mostInLb, BracedPostForces.of(each.all(), 1).kneeMomentInLb());
    }
    double modulusIn3 = (5.5 - 0.5625) * 5.5 * 5.5 / 6;
    assertThat(check(posts(walk, 200), "brace.post-bending").check().demand())
        .isCloseTo(mostInLb / modulusIn3, within(1e-6));
  }

  @Test
  void more_wind_never_works_a_brace_less() {
    double before = 0;
    for (double windLb = 0; windLb <= 600; windLb += 100) {
      double ratio = check(braces(BracedExample.walk(2, windLb)), "brace.axial").check().ratio();
      assertThat(ratio).isGreaterThanOrEqualTo(before);
      before = ratio;
    }
    assertThat(before).isPositive();
  }

  @Test
  void more_wind_never_works_a_post_less() {
    for (String id : List.of("post.bending", "post.combined", "brace.post-bending")) {
      double before = 0;
      for (double windLb = 0; windLb <= 600; windLb += 100) {
        double ratio = check(posts(BracedExample.walk(1, windLb), windLb), id).check().ratio();
        assertThat(ratio).as(id).isGreaterThanOrEqualTo(before);
        before = ratio;
      }
    }
  }

  @Test
  void a_thinner_brace_is_worked_harder() {
    double stout = check(braces(BracedExample.walk(1, 300)), "brace.axial").check().ratio();
    BracedWalk thin = BracedExample.walk(1, 300, BracedExample.timbers(1.5));
    assertThat(check(braces(thin), "brace.axial").check().ratio()).isGreaterThan(2 * stout);
  }

  @Test
  void a_walk_that_would_lean_over_by_itself_fails_by_far() {
    BracedTimbers timbers = BracedExample.timbers(3.5);
    BracedTimbers thin =
        new BracedTimbers(
            BracedExample.timber(0.8, 0.8, 1),
            timbers.header(),
            timbers.crossbeam(),
            timbers.brace(),
            24);
    BracedWalk walk = BracedExample.walk(1, 100, thin);
    List<Checked> posts = posts(walk, 100);
    assertThat(check(posts, "brace.sway").check().ratio()).isGreaterThan(1);
    assertThat(check(posts, "post.drift").check().ratio()).isGreaterThan(10);
  }

  @Test
  void beams_are_bent_and_sheared_by_the_braces_and_pressed_on_their_seats() {
    BracedWalk walk = BracedExample.walk(1, 300);
    List<Checked> crossbeam =
        BracedBeamChecks.ofCrossbeam(walk, BracedExample.LIMITS, BracedExample.SOURCES).list();
    assertThat(crossbeam)
        .extracting(Checked::id)
        .containsExactlyInAnyOrder(
            "crossbeam.brace-bending", "crossbeam.brace-shear", "crossbeam.brace-bearing");
    List<Checked> calm =
        BracedBeamChecks.ofHeader(
                BracedExample.walk(1, CALM_LB), BracedExample.LIMITS, BracedExample.SOURCES)
            .list();
    List<Checked> windy =
        BracedBeamChecks.ofHeader(walk, BracedExample.LIMITS, BracedExample.SOURCES).list();
    assertThat(check(windy, "header.brace-bending").check().ratio())
        .isGreaterThan(check(calm, "header.brace-bending").check().ratio());
  }
}
