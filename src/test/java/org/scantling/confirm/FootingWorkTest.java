package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.confirm.SmallArbour.assertWorked;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;

/** The small structure's post in an 18 in hole, 30 in deep, in soil of 3000 psf and 200 psf/ft. */
class FootingWorkTest {
  private final FootingWork tamped = SmallArbour.footing(false);
  private final Map<String, Checked> checks =
      SmallArbour.byId(tamped.of(30, 18, SmallArbour.SOURCES));

  @Test
  void thirty_inches_fall_short_of_the_published_embedment() {
    // P = 0.6 · 132.97 = 79.78 lb at h = 4.4206 ft; b = 3.5 √2 in = 0.41248 ft; S1 = 2 · 200 d/3.
    // With A = k/d, k = 2.34 · 79.78/(133.33 · 0.41248) = 3.3945, the formula is d³ − k d − 1.09 h
    // k = 0:
    // d = 2.9804 ft.
    assertWorked(checks.get("footing.embedment"), "0.6D+0.6W", 35.765, 30);
    NonConstrainedEmbedment needed = tamped.embedment(18);
    double dFt = needed.depthIn() / 12;
    assertThat(dFt * dFt * dFt - 3.39449 * dFt).isCloseTo(1.09 * 4.42058 * 3.39449, within(1e-2));
  }

  @Test
  void a_collar_of_concrete_leans_on_its_whole_diameter() {
    // b = 1.5 ft: k = 2.34 · 79.78/(133.33 · 1.5) = 0.93344; d³ − 0.93344 d − 4.4977 = 0: d =
    // 1.8393 ft.
    assertThat(SmallArbour.footing(true).embedment(18).depthIn()).isCloseTo(22.07, within(0.02));
  }

  @Test
  void the_foot_presses_lightly_on_a_pad_of_the_hole_s_width() {
    // (382.44 + 25.52)/(π/4 · 18²) · 144.
    assertWorked(checks.get("footing.bearing"), "D+Lr", 230.86, 3000);
  }

  @Test
  void a_collar_presses_on_the_ground_with_what_it_weighs_more_than_the_soil() {
    // 30 in of 150 − 100 pcf are 125 psf besides.
    Map<String, Checked> collar =
        SmallArbour.byId(SmallArbour.footing(true).of(30, 18, SmallArbour.SOURCES));
    assertWorked(collar.get("footing.bearing"), "D+Lr", 355.86, 3000);
    // 96 in of it leave 3000 − 400 psf: √(4 · 407.96/2600 · 144/π) = 5.364 in.
    assertThat(SmallArbour.footing(true).wideEnough(96).neededDiameterIn())
        .isCloseTo(5.364, within(1e-3));
    assertThat(tamped.wideEnough(96).neededDiameterIn()).isCloseTo(4.993, within(1e-3));
  }

  @Test
  void a_hole_wide_enough_for_the_deepest_is_wide_enough_for_all() {
    FootingWork collar = SmallArbour.footing(true);
    double diameterIn = collar.wideEnough(96).neededDiameterIn();
    for (double depthIn = 1; depthIn <= 96; depthIn += 5) {
      assertThat(collar.bearing(depthIn, diameterIn).check().passes()).isTrue();
    }
  }

  @Test
  void posts_in_the_ground_do_not_slide() {
    assertThat(checks).doesNotContainKey("footing.sliding");
    assertThat(tamped.slidingDepthIn(18, 144)).isZero();
  }

  @Test
  void a_person_on_the_far_tail_lifts_it_harder_than_the_wind() {
    // Lift 55.51 lb; held by the post 25.52 lb and the grip 0.15 · 100 · 15 · 4 · 3.5 · 30/1728 =
    // 54.69 lb.
    // The wind: 47.78 lb against 0.6 · 25.52 + 54.69 = 70.0 lb, 0.68.
    assertWorked(checks.get("footing.uplift"), "D+Lr", 55.51, 80.21);
  }

  @Test
  void a_foot_is_held_against_the_lift_at_a_corner_of_the_top_its_header_is_not() {
    // 13.5 psf there instead of 9: seven crossbeams of 3.5 ft² hang on two posts, 0.6 · 165.375 lb
    // less 0.6 · 30.625 lb of timber, 80.85 lb.
    TopLoads cornered = new TopLoads(2, 10, 200, 8, 10, 9, 14, 13.5);
    Checked lifted =
        SmallArbour.byId(SmallArbour.footing(false, cornered).of(30, 18, SmallArbour.SOURCES))
            .get("footing.uplift");
    assertWorked(lifted, "0.6D+0.6W", 80.85, 70);
    HeaderChecks plain = SmallArbour.headers(SmallArbour.geometry());
    HeaderChecks at =
        new HeaderChecks(
            SmallArbour.geometry(),
            SmallArbour.TWO_BY_FOUR,
            cornered,
            SmallArbour.LIMITS,
            SmallArbour.SOURCES);
    assertThat(at.of(SmallArbour.FOUR_BY_FOUR)).isEqualTo(plain.of(SmallArbour.FOUR_BY_FOUR));
  }

  @Test
  void the_joint_of_a_crossbeam_is_held_against_the_lift_at_a_corner_of_the_top() {
    // 14 psf on 48 in by 10.5 in, 49 lb; 0.6 of it less 0.6 · 5.833 lb of timber.
    TopLoads cornered = new TopLoads(2, 10, 200, 8, 10, 9, 14, 13.5);
    HeaderChecks headers =
        new HeaderChecks(
            SmallArbour.geometry(),
            SmallArbour.TWO_BY_FOUR,
            cornered,
            SmallArbour.LIMITS,
            SmallArbour.SOURCES);
    JointForces forces =
        new JointForces(headers, SmallArbour.FOUR_BY_FOUR, SmallArbour.standing(1), 40);
    assertThat(forces.onCrossbeam().get(0).liftLb()).isCloseTo(25.9, within(1e-3));
  }

  @Test
  void the_depth_against_lift_is_the_first_inch_that_holds() {
    // The grip grows with d²: 54.69 (d/30)² ≥ 55.51 − 25.52 from d = 22.2 in;
    // the wind 54.69 (d/30)² ≥ 47.78 − 15.31 from d = 23.1 in.
    assertThat(tamped.upliftDepthIn(18, 144)).isEqualTo(24);
  }

  @Test
  void concrete_holds_by_its_weight() {
    // Concrete (π/4 · 18² − 12.25) · 30 · 150/1728 = 630.8 lb: the wind's 47.78 lb against
    // 0.6 (25.52 + 630.8) = 393.8 lb is 0.121; a person's 55.51 lb against 656.3 lb is 0.085.
    Checked uplift =
        SmallArbour.byId(SmallArbour.footing(true).of(30, 18, SmallArbour.SOURCES))
            .get("footing.uplift");
    assertWorked(uplift, "0.6D+0.6W", 47.775, 393.8);
  }

  @Test
  void of_two_pushes_at_one_height_the_harder_one_is_told() {
    // Across 100 lb at 90 in, along 150 lb at 90 in: 0.6 · 150 = 90 lb asks for the depth.
    HeldFoot held = sideways(new SidePush(100, 0, 90), new SidePush(150, 0, 90)).held(18);
    assertThat(held.push().wind().orElseThrow().way()).isEqualTo(FootPush.Way.ALONG);
    assertThat(told(held, "push").result()).isEqualTo(Measure.pounds(90));
    assertThat(told(held, "push").operands())
        .contains(new FormulaLine.Operand("top", Measure.pounds(150)));
    assertThat(told(held, "length").operands())
        .contains(new FormulaLine.Operand("push", Measure.pounds(90)));
    HeldFoot other = sideways(new SidePush(150, 0, 90), new SidePush(100, 0, 90)).held(18);
    assertThat(other.push().wind().orElseThrow().way()).isEqualTo(FootPush.Way.ACROSS);
  }

  private static FootingWork sideways(SidePush across, SidePush along) {
    FootingWork.Foot foot =
        new FootingWork.Foot(
            false,
            3.5,
            new PresumptiveSoil(3000, 200, 0.35, 0),
            2,
            new BallastWeights(150, 100, 0),
            24,
            0.15);
    return FootingWork.sideways(foot, new PostChecks.Standing(across, along, 0, 0, 1));
  }

  private static FormulaLine told(Calculated worked, String id) {
    return worked.lines().stream().filter(line -> line.id().equals(id)).findFirst().orElseThrow();
  }
}
