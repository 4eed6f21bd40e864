package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.mechanics.Peak;

/** Source of every value: closed form, any strength-of-materials text, e.g. Gere. */
class MechanicsBeamClosedFormTest {
  private static final double W = 10;
  private static final double L = 100;

  private static Offset<Double> near(double value) {
    return within(1e-9 * Math.max(1, Math.abs(value)));
  }

  private static void same(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, near(expected));
  }

  private static void same(Peak actual, double atIn, double amount) {
    assertThat(actual.atIn()).isCloseTo(atIn, within(1e-6 * L));
    same(actual.amount(), amount);
  }

  @Test
  void a_simple_span_under_even_load() {
    ContinuousBeam beam = ContinuousBeam.of(L, 0, L);
    BeamResult result = beam.solve(beam.everywhere(W));
    same(result.reactionLb(0), W * L / 2);
    same(result.reactionLb(1), W * L / 2);
    same(result.mostSagging(), L / 2, W * L * L / 8);
    same(result.largestShear().amount(), W * L / 2);
    same(result.shearLb(25), W * L / 4);
    same(result.shearLb(L), -W * L / 2);
    same(result.momentInLb(25), W * 25 * 75 / 2);
    same(result.largestSpanDeflection(0), L / 2, 5 * W * Math.pow(L, 4) / 384);
    same(result.mostHogging().amount(), 0);
    same(result.leftTipDeflectionLbIn3(), 0);
  }

  @Test
  void a_simple_span_under_a_point_load_off_the_middle() {
    double p = 500;
    double a = 70;
    double b = L - a;
    BeamResult result = ContinuousBeam.of(L, 0, L).solve(new BeamLoad.Point(a, p));
    same(result.reactionLb(0), p * b / L);
    same(result.mostSagging(), a, p * a * b / L);
    double at = Math.sqrt((L * L - b * b) / 3);
    double most = p * b * Math.pow(L * L - b * b, 1.5) / (9 * Math.sqrt(3) * L);
    same(result.largestSpanDeflection(0), at, most);
    same(result.deflectionLbIn3(a), p * a * a * b * b / (3 * L));
  }

  @Test
  void a_simple_span_with_even_load_on_its_left_half() {
    BeamResult result = ContinuousBeam.of(L, 0, L).solve(new BeamLoad.Uniform(0, L / 2, W));
    same(result.reactionLb(0), 3 * W * L / 8);
    same(result.reactionLb(1), W * L / 8);
    same(result.mostSagging(), 3 * L / 8, 9 * W * L * L / 128);
    same(result.deflectionLbIn3(L / 2), 5 * W * Math.pow(L, 4) / 768);
  }

  @Test
  void two_equal_spans_under_even_load() {
    ContinuousBeam beam = ContinuousBeam.of(2 * L, 0, L, 2 * L);
    BeamResult result = beam.solve(beam.everywhere(W));
    same(result.reactionLb(0), 3 * W * L / 8);
    same(result.reactionLb(1), 5 * W * L / 4);
    same(result.reactionLb(2), 3 * W * L / 8);
    same(result.mostHogging(), L, -W * L * L / 8);
    same(result.mostSagging(0), 3 * L / 8, 9 * W * L * L / 128);
    same(result.largestShear().amount(), 5 * W * L / 8);
    // The propped cantilever: 0.4215 of the span from the propped end.
    double at = L * (1 + Math.sqrt(33)) / 16;
    Peak most = result.largestSpanDeflection(0);
    assertThat(most.atIn()).isCloseTo(at, within(1e-6 * L));
    same(most.amount(), W * at * (Math.pow(L, 3) - 3 * L * at * at + 2 * at * at * at) / 48);
  }

  @Test
  void three_equal_spans_under_even_load() {
    ContinuousBeam beam = ContinuousBeam.of(3 * L, 0, L, 2 * L, 3 * L);
    BeamResult result = beam.solve(beam.everywhere(W));
    same(result.reactionLb(0), 0.4 * W * L);
    same(result.reactionLb(1), 1.1 * W * L);
    same(result.momentInLb(L), -0.1 * W * L * L);
    same(result.momentInLb(1.5 * L), 0.025 * W * L * L);
    same(result.mostSagging(2), 2.6 * L, 0.08 * W * L * L);
  }

  @Test
  void a_point_load_on_an_overhang_lifts_the_far_support() {
    double a = 30;
    double p = 200;
    BeamResult result = ContinuousBeam.of(L + a, 0, L).solve(new BeamLoad.Point(L + a, p));
    same(result.reactionLb(0), -p * a / L);
    same(result.reactionLb(1), p * (L + a) / L);
    same(result.mostHogging(), L, -p * a);
    same(result.rightTipDeflectionLbIn3(), p * a * a * (L + a) / 3);
    same(result.largestSpanDeflection(0), L / Math.sqrt(3), -p * a * L * L / (9 * Math.sqrt(3)));
  }

  @Test
  void an_overhang_at_the_left_mirrors_one_at_the_right() {
    double a = 30;
    double p = 200;
    BeamResult result = ContinuousBeam.of(L + a, a, L + a).solve(new BeamLoad.Point(0, p));
    same(result.reactionLb(0), p * (L + a) / L);
    same(result.reactionLb(1), -p * a / L);
    same(result.leftTipDeflectionLbIn3(), p * a * a * (L + a) / 3);
    same(result.shearLb(0), -p);
  }

  @Test
  void a_load_straight_over_a_support_goes_straight_down() {
    BeamResult result =
        ContinuousBeam.of(2 * L, 0, L, 2 * L)
            .solve(new BeamLoad.Point(L, 300), new BeamLoad.Point(0, 70));
    same(result.reactionLb(0), 70);
    same(result.reactionLb(1), 300);
    same(result.largestMoment().amount(), 0);
    same(result.largestShear().amount(), 0);
  }
}
