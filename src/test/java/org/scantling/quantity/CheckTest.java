package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CheckTest {
  @Test
  void a_ratio_of_one_passes_and_the_last_bits_do_not_matter() {
    assertThat(new Check(100, 100).passes()).isTrue();
    assertThat(new Check(100 * (1 + 5e-10), 100).passes()).isTrue();
    assertThat(new Check(100.001, 100).passes()).isFalse();
  }

  @Test
  void a_stricter_limit_can_be_asked_for() {
    assertThat(new Check(90, 100).passes(0.9)).isTrue();
    assertThat(new Check(91, 100).passes(0.9)).isFalse();
  }

  @Test
  void it_refuses_what_is_no_demand_and_no_capacity() {
    assertThatThrownBy(() -> new Check(Double.NaN, 1))
        .hasMessage("demand NaN must be zero or more and finite");
    assertThatThrownBy(() -> new Check(1, 0))
        .hasMessage("capacity 0.0 must be above zero and finite");
  }
}
