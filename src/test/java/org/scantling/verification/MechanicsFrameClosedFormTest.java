package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.mechanics.Axes;
import org.scantling.mechanics.Frame;
import org.scantling.mechanics.FrameLoad;
import org.scantling.mechanics.FrameMember;
import org.scantling.mechanics.FrameNode;
import org.scantling.mechanics.FrameResult;
import org.scantling.mechanics.Hinges;
import org.scantling.mechanics.MemberResult;
import org.scantling.mechanics.MemberStiffness;
import org.scantling.mechanics.Section;
import org.scantling.mechanics.Support;

/**
 * Source of every value, unless it says otherwise: closed form, strength of materials, e.g. Gere.
 */
class MechanicsFrameClosedFormTest {
  private static final double E = 1.6e6;
  private static final double G = 1e5;
  private static final Section POST = Section.solid(5.5, 5.5);
  private static final Section HEADER = Section.solid(3, 9.25);
  private static final double POST_EI = E * POST.strongSecondMomentIn4();
  private static final double HEADER_EI = E * HEADER.strongSecondMomentIn4();

  private static void same(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(1e-8 * Math.max(1, Math.abs(expected))));
  }

  /** As many digits as the expected value is written with: six. */
  private static void six(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(1e-5 * Math.abs(expected)));
  }

  private static Frame post(Support foot, MemberStiffness stiffness) {
    return new Frame(
        List.of(new FrameNode("foot", 0, 0, foot), FrameNode.joint("top", 0, 108)),
        List.of(FrameMember.rigid("post", "foot", "top", stiffness)));
  }

  private static Frame span(Hinges hinges, Support left, Support right) {
    return new Frame(
        List.of(new FrameNode("left", 0, 0, left), new FrameNode("right", 100, 0, right)),
        List.of(
            new FrameMember("beam", "left", "right", MemberStiffness.slender(1e7, 1e8), hinges)));
  }

  @Test
  void a_cantilever_post_with_tip_load_and_wind_over_its_height() {
    double h = 150;
    double w = 1.2;
    double l = 108;
    FrameResult result =
        post(Support.FIXED, MemberStiffness.onEdge(POST, E))
            .solve(
                new FrameLoad.AtNode("top", h, -1000, 0),
                FrameLoad.Uniform.whole("post", Axes.GLOBAL, w, 0));
    double bend = h * l * l * l / (3 * POST_EI) + w * Math.pow(l, 4) / (8 * POST_EI);
    same(result.movement("top").xIn(), bend);
    six(result.movement("top").xIn(), 0.683502);
    six(result.movement("top").turnRad(), -0.00923496);
    six(result.movement("top").yIn(), -0.00223140);
    same(result.reaction("foot").momentInLb(), h * l + w * l * l / 2);
    six(-result.member("post").movementIn(54), 0.220564);
    same(result.member("post").axialLb(54), -1000);
    same(result.member("post").mostCompression().amount(), -1000);
  }

  @Test
  void a_post_on_a_turning_spring_leans_by_the_foot_as_well() {
    double h = 150;
    double l = 108;
    double k = 2e6;
    FrameResult result =
        post(Support.turningSpring(k), MemberStiffness.onEdge(POST, E))
            .solve(new FrameLoad.AtNode("top", h, 0, 0));
    same(result.movement("top").xIn(), h * l * l * l / (3 * POST_EI) + h * l * l / k);
    six(result.movement("top").xIn(), 1.39104);
    six(-result.movement("top").turnRad(), 0.0152700);
    same(result.reaction("foot").momentInLb(), h * l);
  }

  @Test
  void a_soft_support_sinks_by_its_reaction_over_its_stiffness() {
    FrameResult result =
        span(Hinges.NONE, Support.PINNED, new Support(0, 500, 0))
            .solve(FrameLoad.Uniform.whole("beam", Axes.GLOBAL, 0, -10));
    same(result.reaction("right").yLb(), 500);
    same(result.movement("right").yIn(), -1);
    same(result.member("beam").sagIn(50), 5 * 10 * 1e8 / (384 * 1e8));
  }

  @Test
  void shear_deformation_adds_its_part_when_asked_for() {
    double shear = 5.0 / 6 * G * HEADER.areaIn2();
    MemberStiffness stiffness = new MemberStiffness(E * HEADER.areaIn2(), HEADER_EI, shear);
    Frame cantilever =
        new Frame(
            List.of(new FrameNode("wall", 0, 0, Support.FIXED), FrameNode.joint("tip", 60, 0)),
            List.of(FrameMember.rigid("arm", "wall", "tip", stiffness)));
    double p = 300;
    double tip = -cantilever.solve(new FrameLoad.AtNode("tip", 0, -p, 0)).movement("tip").yIn();
    same(tip, p * 60 * 60 * 60 / (3 * HEADER_EI) + p * 60 / shear);
    six(tip, 0.0760127);

    Frame simple =
        new Frame(
            List.of(
                new FrameNode("left", 0, 0, Support.PINNED),
                new FrameNode("right", 144, 0, Support.SLIDING_SIDEWAYS)),
            List.of(FrameMember.rigid("header", "left", "right", stiffness)));
    double sag =
        simple
            .solve(FrameLoad.Uniform.whole("header", Axes.GLOBAL, 0, -10))
            .member("header")
            .sagIn(72);
    Frame hinged =
        new Frame(
            List.of(
                new FrameNode("left", 0, 0, Support.FIXED),
                new FrameNode("right", 144, 0, Support.FIXED)),
            List.of(new FrameMember("header", "left", "right", stiffness, Hinges.BOTH)));
    MemberResult between =
        hinged.solve(FrameLoad.Uniform.whole("header", Axes.GLOBAL, 0, -10)).member("header");
    same(between.sagIn(72), sag);
    same(between.movementIn(144), 0);
    same(sag, 5 * 10 * Math.pow(144, 4) / (384 * HEADER_EI) + 10 * 144 * 144 / (8 * shear));
    six(sag, 0.188058);
  }

  @Test
  void a_beam_fixed_at_both_ends() {
    FrameResult result =
        span(Hinges.NONE, Support.FIXED, Support.FIXED)
            .solve(FrameLoad.Uniform.whole("beam", Axes.MEMBER, 0, -12));
    same(result.reaction("left").momentInLb(), 12.0 * 1e4 / 12);
    same(result.reaction("right").momentInLb(), -12.0 * 1e4 / 12);
    same(result.member("beam").momentInLb(50), 12.0 * 1e4 / 24);
    same(result.member("beam").sagIn(50), 12.0 * 1e8 / (384 * 1e8));
    same(result.member("beam").largestMoment().amount(), -12.0 * 1e4 / 12);
  }

  @Test
  void a_propped_cantilever_by_a_hinge_at_either_end() {
    for (Hinges hinges : List.of(Hinges.START, Hinges.END)) {
      String held = hinges == Hinges.START ? "right" : "left";
      String propped = hinges == Hinges.START ? "left" : "right";
      FrameResult result =
          span(hinges, Support.FIXED, Support.FIXED)
              .solve(FrameLoad.Uniform.whole("beam", Axes.GLOBAL, 0, -8));
      same(result.reaction(held).yLb(), 5.0 / 8 * 800);
      same(result.reaction(propped).yLb(), 3.0 / 8 * 800);
      same(Math.abs(result.reaction(held).momentInLb()), 8 * 1e4 / 8);
      same(result.reaction(propped).momentInLb(), 0);
      same(result.member("beam").sagIn(50), 8 * 1e8 / (192 * 1e8));
    }
  }

  @Test
  void hinges_at_both_ends_make_a_simple_span() {
    FrameResult result =
        span(Hinges.BOTH, Support.FIXED, Support.FIXED)
            .solve(new FrameLoad.Point("beam", Axes.GLOBAL, 25, 0, -400));
    same(result.reaction("left").yLb(), 300);
    same(result.member("beam").momentInLb(25), 400.0 * 25 * 75 / 100);
    same(result.member("beam").sagIn(25), 400.0 * 25 * 25 * 75 * 75 / (3 * 1e8 * 100));
  }

  @Test
  void a_fixed_foot_portal_of_stiff_axial_members_follows_the_portal_formulas() {
    // Source: portal frame formulas of Kleinlogel type, k = (I beam / I post)(h / L).
    double h = 96;
    double l = 144;
    double k = HEADER.strongSecondMomentIn4() / POST.strongSecondMomentIn4() * h / l;
    MemberStiffness post = MemberStiffness.slender(1e14, POST_EI);
    MemberStiffness beam = MemberStiffness.slender(1e14, HEADER_EI);
    Frame portal =
        new Frame(
            List.of(
                new FrameNode("A", 0, 0, Support.FIXED),
                FrameNode.joint("B", 0, h),
                FrameNode.joint("C", l, h),
                new FrameNode("D", l, 0, Support.FIXED)),
            List.of(
                FrameMember.rigid("left", "A", "B", post),
                FrameMember.rigid("beam", "B", "C", beam),
                FrameMember.rigid("right", "C", "D", post)));
    FrameResult sideways = portal.solve(new FrameLoad.AtNode("B", 400, 0, 0));
    six(sideways.reaction("A").momentInLb(), 400 * h / 2 * (3 * k + 1) / (6 * k + 1));
    six(sideways.member("beam").momentInLb(0), 400 * h / 2 * 3 * k / (6 * k + 1));
    FrameResult down = portal.solve(FrameLoad.Uniform.whole("beam", Axes.GLOBAL, 0, -6));
    six(-down.reaction("A").momentInLb(), 6 * l * l / (12 * (k + 2)));
    six(down.member("beam").momentInLb(0), -6 * l * l / (6 * (k + 2)));
    six(down.member("beam").momentInLb(72), 6 * l * l / 8 - 6 * l * l / (6 * (k + 2)));
  }

  @Test
  void loads_along_a_member_are_shared_by_its_two_held_ends() {
    FrameResult result =
        span(Hinges.NONE, Support.FIXED, Support.FIXED)
            .solve(new FrameLoad.Point("beam", Axes.MEMBER, 30, 100, 0));
    same(result.reaction("left").xLb(), -70);
    same(result.reaction("right").xLb(), -30);
    same(result.member("beam").mostTension().amount(), 70);
    same(result.member("beam").mostCompression().amount(), -30);
  }

  @Test
  void a_sloping_member_feels_its_weight_across_and_along() {
    // A 3-4-5 rafter of 100 in, hinged at both ends: weight w a foot of its own length.
    Frame rafter =
        new Frame(
            List.of(
                new FrameNode("low", 0, 0, Support.PINNED),
                new FrameNode("high", 80, 60, Support.SLIDING_UPRIGHT)),
            List.of(FrameMember.rigid("rafter", "low", "high", MemberStiffness.slender(1e7, 1e8))));
    FrameResult result = rafter.solve(FrameLoad.Uniform.whole("rafter", Axes.GLOBAL, 0, -2));
    same(result.member("rafter").largestMoment().amount(), 2 * 0.8 * 1e4 / 8);
    same(result.reaction("low").yLb(), 200);
    same(result.reaction("high").xLb(), -200.0 * 40 / 60);
  }

  @Test
  void a_propped_beam_with_shear_deformation() {
    // Tip of the cantilever under even load sinks wL⁴/8EI + wL²/2GA, and rises again by
    // R·(L³/3EI + L/GA): the prop's reaction R makes both equal.
    double ei = 1e8;
    double ga = 2e5;
    MemberStiffness stiffness = new MemberStiffness(1e7, ei, ga);
    double r = (8 * 1e8 / (8 * ei) + 8 * 1e4 / (2 * ga)) / (1e6 / (3 * ei) + 100 / ga);
    for (Hinges hinges : List.of(Hinges.START, Hinges.END)) {
      Frame frame =
          new Frame(
              List.of(
                  new FrameNode("left", 0, 0, Support.FIXED),
                  new FrameNode("right", 100, 0, Support.FIXED)),
              List.of(new FrameMember("beam", "left", "right", stiffness, hinges)));
      FrameResult result = frame.solve(FrameLoad.Uniform.whole("beam", Axes.GLOBAL, 0, -8));
      same(result.reaction(hinges == Hinges.START ? "left" : "right").yLb(), r);
    }
  }

  @Test
  void a_hanging_piece_stretches_under_its_own_weight() {
    Frame frame =
        new Frame(
            List.of(new FrameNode("hook", 0, 0, Support.FIXED), FrameNode.joint("end", 0, -50)),
            List.of(FrameMember.rigid("rod", "hook", "end", MemberStiffness.slender(1e4, 1e6))));
    FrameResult result = frame.solve(FrameLoad.Uniform.whole("rod", Axes.GLOBAL, 0, -3));
    same(result.movement("end").yIn(), -3.0 * 50 * 50 / (2 * 1e4));
    same(result.member("rod").mostTension().amount(), 150);
    same(result.member("rod").axialLb(25), 75);
    same(result.member("rod").axialLb(50), 0);
  }

  @Test
  void the_lowest_place_of_a_beam_with_shear_deformation_is_where_its_axis_is_level() {
    MemberStiffness stiffness = new MemberStiffness(1e7, 1e8, 5e4);
    Frame frame =
        new Frame(
            List.of(
                new FrameNode("left", 0, 0, Support.FIXED),
                new FrameNode("right", 100, 0, Support.SLIDING_SIDEWAYS)),
            List.of(FrameMember.rigid("beam", "left", "right", stiffness)));
    MemberResult beam =
        frame.solve(FrameLoad.Uniform.whole("beam", Axes.GLOBAL, 0, -8)).member("beam");
    double lowest = beam.largestMovement().amount();
    double sampled = 0;
    for (int i = 0; i <= 10_000; i++) {
      sampled = Math.min(sampled, beam.movementIn(i / 100.0));
    }
    assertThat(lowest).isCloseTo(sampled, within(1e-7)).isLessThanOrEqualTo(sampled + 1e-14);
    same(beam.movementIn(beam.largestMovement().atIn()), lowest);
  }
}
