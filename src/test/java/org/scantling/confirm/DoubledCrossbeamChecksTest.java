package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.timber.Dowel;

/** Two 2x8 crossbeams side by side over a pair of posts on brackets, against one; dry fir. */
class DoubledCrossbeamChecksTest {
  private static final double WIND_LB = 300;

  private static BracedWalk walk(int plies) {
    BracedTimbers single = BracedExample.timbers(3.5);
    BracedTimbers timbers =
        new BracedTimbers(
            single.post(),
            single.header(),
            single.crossbeam().plies(plies),
            single.brace(),
            single.legIn());
    Geometry on = BracedExample.geometry(2);
    Geometry.Crossbeams one = on.crossbeams();
    Geometry geometry =
        new Geometry(
            on.plan(),
            on.posts(),
            on.headers(),
            new Geometry.Crossbeams(
                one.perBay(),
                one.breadthIn(),
                one.depthIn(),
                one.overhangIn(),
                one.notchIn(),
                one.endMarginIn(),
                false,
                plies > 1));
    return new BracedWalk(
        geometry,
        timbers,
        BracedExample.headers(geometry, single),
        BracedExample.TOP,
        BracedExample.wind(WIND_LB));
  }

  private static Check check(List<Checked> checks, String id) {
    return checks.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow().check();
  }

  private static Check bolt(int plies, double diameterIn) {
    JointFix fix =
        new JointFix(
            JointFix.Way.BOLTED,
            1,
            Dowel.smooth(diameterIn, 45000),
            new JointFix.Reach(10, 0, 0),
            new JointFix.Rated(0, 0));
    return check(
        new JointBraceChecks(walk(plies), JointChecksTest.RULES)
            .at(JointBraceChecks.Timber.CROSSBEAM, fix),
        "brace.joint");
  }

  private static Check beam(int plies, String id) {
    return check(
        BracedBeamChecks.ofCrossbeam(walk(plies), BracedExample.LIMITS, BracedExample.SOURCES)
            .list(),
        id);
  }

  /**
   * NDS 2018, 12.3.1, worked apart: 1/2 in bolt, F_yb 45 000, G 0.50, brace 3 1/2 in along its
   * grain (5600 psi), crossbeam at 45 degrees (4038 psi), R_d 4.5, 4.05 and 3.6. In 1 1/2 in of
   * crossbeam I_m 673, II 760, III_m 460, III_s 921, IV 583: 460 lb. In twice 1 1/2 in I_m 1346, II
   * 819, III_m 680, III_s 921, IV 583: 583 lb. Times C_D 1.6 and C_M 0.7. The crossbeam is 7 1/4 in
   * deep, 5.13 in to the end of a pulled brace, over 7 diameters: no distance takes anything off.
   */
  @Test
  void a_brace_bolt_finds_twice_the_crossbeam_and_holds_583_lb_where_one_holds_460() {
    assertThat(bolt(1, 0.5).capacity()).isCloseTo(460.3 * 1.6 * 0.7, within(0.5));
    assertThat(bolt(2, 0.5).capacity()).isCloseTo(582.6 * 1.6 * 0.7, within(0.5));
  }

  /**
   * NDS 2018, 3.4.3.3: the bolt sits at half of 7 1/4 in, 12 + 2 3/4 + 24 in from the end, over
   * five depths: each of the two holds 2/3 x 180 psi x 1.6 x 1 1/2 in x 3 5/8 in = 1044 lb, and
   * takes half of what the braces bring.
   */
  @Test
  void each_of_two_takes_half_of_the_shear_that_splits_one_past_the_bolt() {
    Check one = beam(1, "crossbeam.brace-shear");
    Check two = beam(2, "crossbeam.brace-shear");
    assertThat(one.capacity()).isCloseTo(1044, within(1e-6));
    assertThat(two.capacity()).isCloseTo(1044, within(1e-6));
    assertThat(two.demand() / one.demand()).isBetween(0.48, 0.55);
  }

  /** 2/3 x 180 x 1.6 x 3 x 3 5/8 in of one timber as broad as both would say the same. */
  @Test
  void two_split_no_sooner_than_one_timber_as_broad_as_both() {
    BracedWalk pair = walk(2);
    Check two = beam(2, "crossbeam.brace-shear");
    Material both = pair.timbers().crossbeam().asOne();
    assertThat(both.section().breadthIn()).isEqualTo(3.0);
    assertThat(2 * two.capacity())
        .isCloseTo(2.0 / 3 * 180 * 1.6 * both.section().breadthIn() * 7.25 / 2, within(1e-6));
  }

  @Test
  void braces_bend_each_of_two_about_half_as_hard_and_press_half_as_hard_on_its_seat() {
    assertThat(beam(2, "crossbeam.brace-bending").ratio())
        .isLessThan(0.65 * beam(1, "crossbeam.brace-bending").ratio());
    assertThat(beam(2, "crossbeam.brace-bearing").ratio())
        .isLessThan(0.6 * beam(1, "crossbeam.brace-bearing").ratio());
  }

  /**
   * A 2x8 of 125 1/2 in, 1.5 x 7.25 x 125.5 / 1728 x 35 pcf = 27.6 lb: so much more stands on the
   * two posts of a frame across the walk, and half of it at each of the three posts of a row.
   */
  @Test
  void the_second_of_two_weighs_on_the_posts_both_ways() {
    double pieceLb = 1.5 * 7.25 * 125.5 / 1728 * 35;
    assertThat(feetLb(walk(2).across()) - feetLb(walk(1).across()))
        .isCloseTo(pieceLb, within(1e-6));
    assertThat(feetLb(walk(2).along()) - feetLb(walk(1).along()))
        .isCloseTo(3 * pieceLb / 2, within(1e-6));
  }

  private static double feetLb(BracedWay way) {
    BracedCase dead =
        way.cases().stream()
            .filter(each -> each.combination() == LoadCombination.DEAD_ALONE)
            .findFirst()
            .orElseThrow();
    double feetLb = 0;
    for (int post = 0; post < way.plane().postCount(); post++) {
      feetLb += dead.all().reaction(BracedPlane.foot(post)).yLb();
    }
    return feetLb;
  }
}
