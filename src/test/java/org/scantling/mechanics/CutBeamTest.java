package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Beams in pieces that meet over a support, against the closed forms of each piece by itself. */
class CutBeamTest {
  private static final double W = 10;
  private static final double L = 100;

  @Test
  void two_spans_cut_over_the_middle_are_two_simple_spans() {
    ContinuousBeam beam = ContinuousBeam.of(2 * L, 0, L, 2 * L).cutOver(Set.of(1));
    BeamResult result = beam.solve(beam.everywhere(W));
    // wL/2 at the ends, wL in the middle; wL²/8; 5wL⁴/384 in both spans.
    assertThat(result.reactionsLb()).containsExactly(new double[] {500, 1000, 500}, within(1e-9));
    assertThat(result.momentInLb(L)).isCloseTo(0, within(1e-6));
    assertThat(result.mostSagging(0).amount()).isCloseTo(12_500, within(1e-6));
    assertThat(result.mostHogging().amount()).isCloseTo(0, within(1e-6));
    for (int span = 0; span < 2; span++) {
      assertThat(result.largestSpanDeflection(span).amount())
          .isCloseTo(5 * W * Math.pow(L, 4) / 384, within(1e-3));
    }
  }

  @Test
  void a_piece_of_two_bays_and_one_of_one_each_carry_their_own() {
    ContinuousBeam beam = ContinuousBeam.of(3 * L, 0, L, 2 * L, 3 * L).cutOver(Set.of(2));
    BeamResult result = beam.solve(beam.everywhere(W));
    // Two equal spans: 3/8, 5/4, 3/8 of wL; one: 1/2, 1/2. At the joint 3/8 + 1/2.
    assertThat(result.reactionsLb())
        .containsExactly(new double[] {375, 1250, 875, 500}, within(1e-9));
    assertThat(result.onSupports().leftLb(2)).isCloseTo(375, within(1e-9));
    assertThat(result.onSupports().rightLb(2)).isCloseTo(500, within(1e-9));
    assertThat(result.momentInLb(L)).isCloseTo(-W * L * L / 8, within(1e-6));
  }

  @Test
  void a_load_on_one_piece_is_not_felt_by_the_next() {
    ContinuousBeam beam = ContinuousBeam.of(3 * L, 0, L, 2 * L, 3 * L).cutOver(Set.of(1));
    BeamResult result = beam.solve(new BeamLoad.Point(L / 2, 100), new BeamLoad.Point(L, 40));
    assertThat(result.reactionsLb()).containsExactly(new double[] {50, 90, 0, 0}, within(1e-9));
    assertThat(result.onSupports().overLb(1)).isEqualTo(40);
    assertThat(result.largestSpanDeflection(1).amount()).isCloseTo(0, within(1e-6));
  }

  @Test
  void a_tail_turns_with_the_piece_that_carries_it() {
    double a = 40;
    ContinuousBeam beam = ContinuousBeam.of(a + 2 * L, a, a + L, a + 2 * L).cutOver(Set.of(1));
    BeamResult result = beam.solve(new BeamLoad.Point(0, 60));
    // One span with an overhang, a load P on its tip: P a² (L + a)/3, whatever lies beyond the cut.
    assertThat(result.leftTipDeflectionLbIn3()).isCloseTo(60 * a * a * (L + a) / 3, within(1e-3));
    assertThat(result.reactionLb(1)).isCloseTo(-60 * a / L, within(1e-9));
  }

  @Test
  void a_beam_is_cut_over_inner_supports_only() {
    ContinuousBeam beam = ContinuousBeam.of(2 * L, 0, L, 2 * L);
    assertThat(beam.cuts()).isEmpty();
    assertThat(beam.cutOver(Set.of(1)).cuts()).containsExactly(1);
    assertThatThrownBy(() -> beam.cutOver(Set.of(2)))
        .hasMessage("support 3 must have a span on both sides where a beam is cut over it");
  }
}
