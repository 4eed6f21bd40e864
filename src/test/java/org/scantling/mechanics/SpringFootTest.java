package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SpringFootTest {
  @Test
  void a_foot_as_stiff_as_a_quarter_of_pi_doubles_the_length_that_buckles() {
    // x tan x = c h/EI = π/4 at x = π/4, since tan π/4 = 1: (π/2)/x = 2.
    double stiffnessLbIn2 = 1e7;
    double heightIn = 100;
    double turningInLb = Math.PI / 4 * stiffnessLbIn2 / heightIn;
    assertThat(new SpringFoot(turningInLb, stiffnessLbIn2, heightIn).softeningFactor())
        .isCloseTo(2, within(1e-9));
  }

  @Test
  void a_foot_that_does_not_turn_changes_nothing() {
    assertThat(new SpringFoot(Double.POSITIVE_INFINITY, 1e7, 100).softeningFactor()).isEqualTo(1);
    // For a stiff foot x is near (π/2)/(1 + EI/ch).
    assertThat(new SpringFoot(1e8, 1e7, 100).softeningFactor()).isCloseTo(1.001, within(1e-5));
  }

  /** A rigid rod on the same spring leans over under c/h, so P cannot be more than that. */
  @Property(tries = 200)
  void the_load_that_buckles_it_is_less_than_that_of_the_firm_foot_and_of_the_stiff_rod(
      @ForAll @DoubleRange(min = 1e5, max = 1e7) double turningInLb,
      @ForAll @DoubleRange(min = 5e6, max = 5e8) double stiffnessLbIn2) {
    double heightIn = 96;
    double softer = new SpringFoot(turningInLb, stiffnessLbIn2, heightIn).softeningFactor();
    double firmLb = Math.PI * Math.PI / 4 * stiffnessLbIn2 / (heightIn * heightIn);
    double buckledLb = firmLb / (softer * softer);
    double rodLb = turningInLb / heightIn;
    assertThat(buckledLb).isLessThan(Math.min(firmLb, rodLb));
    // Dunkerley: the inverses of both together are never too small a sum.
    assertThat(buckledLb).isGreaterThan(1 / (1 / firmLb + 1 / rodLb) * (1 - 1e-9));
  }

  @Test
  void a_foot_that_nothing_holds_is_refused() {
    assertThatThrownBy(() -> new SpringFoot(0, 1e7, 100))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("found 0.0 in-lb");
  }
}
