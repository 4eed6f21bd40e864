package org.scantling.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Rounding goes the way its name says, and leaves a number on its step alone. */
class RoundingTest {
  private static final double LAST_BITS = 1e-12;

  @Test
  void up_is_up_to_the_next_step() {
    assertThat(Rounding.UP_TO_INCH.round(36.01)).isEqualTo(37);
    assertThat(Rounding.UP_TO_SIXTEENTH.round(36.01)).isEqualTo(36.0625);
    assertThat(Rounding.UP_TO_MM.round(101 / 25.4 - 0.001))
        .isCloseTo(101 / 25.4, within(LAST_BITS));
    assertThat(Rounding.UP_TO_25_MM.round(901 / 25.4)).isCloseTo(925 / 25.4, within(LAST_BITS));
  }

  @Test
  void down_is_down_to_the_next_step() {
    assertThat(Rounding.DOWN_TO_SIXTEENTH.round(10.99)).isEqualTo(10.9375);
    assertThat(Rounding.DOWN_TO_MM.round(101 / 25.4 + 0.001))
        .isCloseTo(101 / 25.4, within(LAST_BITS));
  }

  @Test
  void a_number_on_its_step_stays_whatever_its_last_bits_say() {
    for (Rounding rounding : Rounding.values()) {
      double onStep = rounding.name().contains("M") ? 900 / 25.4 : 36;
      for (double number : new double[] {onStep, onStep + LAST_BITS, onStep - LAST_BITS}) {
        assertThat(rounding.round(number)).as(rounding.name()).isCloseTo(onStep, within(1e-10));
      }
    }
  }

  @Test
  void none_leaves_every_bit() {
    assertThat(Rounding.NONE.round(36.0123456789)).isEqualTo(36.0123456789);
  }

  @Test
  void nothing_is_rounded_to_nothing() {
    assertThat(Rounding.DOWN_TO_SIXTEENTH.round(0)).isZero();
    assertThat(Rounding.UP_TO_INCH.round(0)).isZero();
  }
}
