package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SwayTest {
  @Test
  void the_worked_number_of_its_description() {
    Sway sway = Sway.ofDrift(8000, 150, 0.51624, 108);
    assertThat(sway.criticalLb()).isCloseTo(25810, within(0.5));
    assertThat(sway.amplifierFactor()).isCloseTo(1.449, within(0.0005));
  }

  @Test
  void posts_at_their_critical_load_cannot_stand() {
    assertThat(new Sway(999, 1000).stable()).isTrue();
    Sway falling = new Sway(1000, 1000);
    assertThat(falling.stable()).isFalse();
    assertThat(falling.amplifierFactor()).isInfinite();
    assertThat(new Sway(0, 1000).amplifierFactor()).isEqualTo(1);
  }

  @Test
  void it_refuses_what_makes_no_sense() {
    assertThatThrownBy(() -> new Sway(-1, 10))
        .hasMessage("vertical load -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> new Sway(1, 0))
        .hasMessage("critical load 0.0 lb must be above zero and finite");
    assertThatThrownBy(() -> Sway.ofDrift(1, 1, 0, 1))
        .hasMessage("drift 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> Sway.ofDrift(1, 0, 1, 1))
        .hasMessage("sideways force 0.0 lb must be above zero and finite");
    assertThatThrownBy(() -> Sway.ofDrift(1, 1, 1, -1))
        .hasMessage("height -1.0 in must be above zero and finite");
    assertThatThrownBy(() -> Sway.ofCantilever(1, 0, 1))
        .hasMessage("bending stiffness 0.0 lb·in² must be above zero and finite");
    assertThatThrownBy(() -> Sway.ofCantilever(1, 1, 0))
        .hasMessage("effective length 0.0 in must be above zero and finite");
  }
}
