package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class SnowPatternTest {
  @Test
  void a_single_span_has_the_full_load_only() {
    assertThat(SnowPattern.forSpans(1)).containsExactly(new SnowPattern(List.of(1.0)));
  }

  @Test
  void two_spans_are_full_together_or_one_at_a_time() {
    assertThat(SnowPattern.forSpans(2))
        .extracting(SnowPattern::spanFactors)
        .containsExactly(List.of(1.0, 1.0), List.of(1.0, 0.5), List.of(0.5, 1.0));
  }

  @Test
  void three_spans_have_five_patterns() {
    assertThat(SnowPattern.forSpans(3))
        .extracting(SnowPattern::spanFactors)
        .containsExactly(
            List.of(1.0, 1.0, 1.0),
            List.of(1.0, 0.5, 0.5),
            List.of(0.5, 0.5, 1.0),
            List.of(0.5, 1.0, 1.0),
            List.of(1.0, 1.0, 0.5));
  }

  @Test
  void each_neighbouring_pair_of_four_spans_is_loaded_in_turn() {
    assertThat(SnowPattern.forSpans(4))
        .extracting(SnowPattern::spanFactors)
        .contains(
            List.of(1.0, 1.0, 0.5, 0.5), List.of(0.5, 1.0, 1.0, 0.5), List.of(0.5, 0.5, 1.0, 1.0))
        .hasSize(8);
  }

  @Test
  void it_refuses_a_beam_without_spans() {
    assertThatThrownBy(() -> SnowPattern.forSpans(0)).hasMessage("span count 0 must be at least 1");
    assertThatThrownBy(() -> new SnowPattern(List.of()))
        .hasMessage("a snow pattern has 0 spans and must have at least 1");
    assertThatThrownBy(() -> new SnowPattern(List.of(1.5)))
        .hasMessage("span factor of a snow pattern 1.5 must be between 0 and 1");
  }
}
