package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WeightTest {
  @Test
  void a_wet_4x4_of_8_ft_weighs_about_31_lb() {
    MemberWeight weight = MemberWeight.of(3.5, 3.5, 45);
    assertThat(weight.weightLbPerIn()).isCloseTo(0.319, within(0.0005));
    assertThat(weight.weightLb(96)).isCloseTo(30.6, within(0.05));
  }

  @Test
  void it_refuses_timbers_that_cannot_be() {
    assertThatThrownBy(() -> MemberWeight.of(3.5, 3.5, 0))
        .hasMessage("unit weight 0.0 pcf must be above zero and finite");
    assertThatThrownBy(() -> MemberWeight.of(3.5, 3.5, 45).weightLb(-1))
        .hasMessage("length -1.0 in must be zero or more and finite");
  }
}
