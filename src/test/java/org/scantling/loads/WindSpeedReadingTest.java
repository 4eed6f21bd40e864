package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.loads.WindSpeedReading.Kind;

class WindSpeedReadingTest {
  private static final WindSpeedLimits LIMITS = new WindSpeedLimits(60, 95, 220);

  @ParameterizedTest
  @CsvSource({
    "59.9,  TOO_SLOW",
    "60,    PERHAPS_ALLOWABLE_STRESS",
    "90,    PERHAPS_ALLOWABLE_STRESS",
    "94.9,  PERHAPS_ALLOWABLE_STRESS",
    "95,    STRENGTH_LEVEL",
    "115,   STRENGTH_LEVEL",
    "220,   STRENGTH_LEVEL",
    "220.1, TOO_FAST"
  })
  void a_speed_is_judged_by_the_limits_given(double speedMph, Kind kind) {
    assertThat(WindSpeedReading.of(speedMph, LIMITS).kind()).isEqualTo(kind);
  }

  @Test
  void the_speed_is_carried_over_to_the_other_level() {
    assertThat(WindSpeedReading.of(115, LIMITS).asAllowableStressMph())
        .isCloseTo(89.08, within(0.005));
    assertThat(WindSpeedReading.of(90, LIMITS).asStrengthLevelMph()).isCloseTo(116.2, within(0.05));
  }

  @Test
  void it_refuses_limits_out_of_order() {
    assertThatThrownBy(() -> new WindSpeedLimits(100, 95, 220))
        .hasMessage(
            "slowest design wind speed (mph) 100.0 must be not more than the slowest"
                + " strength-level speed (mph) 95.0");
    assertThatThrownBy(() -> new WindSpeedLimits(60, 95, 90))
        .hasMessage(
            "slowest strength-level speed (mph) 95.0 must be not more than the fastest design"
                + " wind speed (mph) 90.0");
    assertThatThrownBy(() -> WindSpeedReading.of(0, LIMITS))
        .hasMessage("wind speed (mph) 0.0 must be above zero and finite");
  }
}
