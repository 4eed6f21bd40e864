package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** ASCE 7-16 figure 26.8-1, two-dimensional ridge, exposure C; from memory. */
class HillWindTest {
  private static final HillWind.Shape RIDGE = new HillWind.Shape(1.45, 3, 1.5);
  private static final HillWind.Bounds COUNTS = new HillWind.Bounds(180, 0.2, 0.5);

  private static HillWind at(double heightFt, double halfFt, double fromFt, double aboveFt) {
    return HillWind.of(
        new HillWind.Place(heightFt * 12, halfFt * 12, fromFt * 12, aboveFt * 12), RIDGE, COUNTS);
  }

  @Test
  void on_the_crest_of_a_ridge_the_wind_presses_nearly_twice_as_hard() {
    // K1 = 1.45 * 40/150 = 0.3867; 1.3867^2.
    assertThat(at(40, 150, 0, 0).topographicFactor()).isCloseTo(1.9229, within(1e-4));
  }

  @Test
  void farther_from_the_crest_and_higher_up_it_presses_less() {
    // K2 = 1 - 75/(1.5 * 150) = 2/3, K3 = e^(-3 * 10/150) = 0.8187: (1 + 0.3867 * 0.5458)^2.
    assertThat(at(40, 150, 75, 10).topographicFactor()).isCloseTo(1.4666, within(1e-3));
    assertThat(at(40, 150, 225, 10).topographicFactor()).isEqualTo(1);
    assertThat(at(40, 150, 900, 10).topographicFactor()).isEqualTo(1);
  }

  @Test
  void a_steep_hill_counts_as_half_as_steep_and_as_long_as_that_makes_it() {
    // 40 ft over 50 ft: K1 = 1.45 * 0.5 = 0.725, length 80 ft, K3 = e^(-3 * 10/80) = 0.6873.
    assertThat(at(40, 50, 0, 10).topographicFactor())
        .isCloseTo((1 + 0.725 * 0.6873) * (1 + 0.725 * 0.6873), within(1e-3));
  }

  @Test
  void a_low_or_gentle_hill_does_not_count() {
    assertThat(at(14.9, 50, 0, 0).topographicFactor()).isEqualTo(1);
    assertThat(at(40, 201, 0, 0).topographicFactor()).isEqualTo(1);
    assertThat(at(15, 50, 0, 0).topographicFactor()).isGreaterThan(1);
    assertThat(at(40, 200, 0, 0).topographicFactor()).isGreaterThan(1);
  }
}
