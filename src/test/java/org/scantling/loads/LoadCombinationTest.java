package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LoadCombinationTest {
  /** C_D of NDS 2018 table 2.3.2. */
  private static final DurationFactors DURATIONS = new DurationFactors(0.9, 1.15, 1.25, 1.6);

  /** Factors of ASCE 7-16 section 2.4.1, as IBC 1605.3.1 prints them too. */
  @ParameterizedTest
  @CsvSource({
    "D,                   1,   0,    0,    0,    DEAD,      0.9",
    "D+Lr,                1,   1,    0,    0,    ROOF_LIVE, 1.25",
    "D+S,                 1,   0,    1,    0,    SNOW,      1.15",
    "D+0.6W,              1,   0,    0,    0.6,  WIND,      1.6",
    "D+0.75(0.6W)+0.75Lr, 1,   0.75, 0,    0.45, WIND,      1.6",
    "D+0.75(0.6W)+0.75S,  1,   0,    0.75, 0.45, WIND,      1.6",
    "0.6D+0.6W,           0.6, 0,    0,    0.6,  WIND,      1.6"
  })
  void a_combination_has_its_factors_and_goes_by_its_shortest_load(
      String id,
      double deadFactor,
      double liveFactor,
      double snowFactor,
      double windFactor,
      LoadKind shortest,
      double durationFactor) {
    LoadCombination combination = LoadCombination.of(id);
    assertThat(combination.factor(LoadKind.DEAD)).isCloseTo(deadFactor, within(1e-12));
    assertThat(combination.factor(LoadKind.VINES)).isCloseTo(deadFactor, within(1e-12));
    assertThat(combination.factor(LoadKind.ROOF_LIVE)).isCloseTo(liveFactor, within(1e-12));
    assertThat(combination.factor(LoadKind.SNOW)).isCloseTo(snowFactor, within(1e-12));
    assertThat(combination.factor(LoadKind.WIND)).isCloseTo(windFactor, within(1e-12));
    assertThat(combination.shortestLoad()).isEqualTo(shortest);
    assertThat(DURATIONS.of(combination)).isCloseTo(durationFactor, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource
  void every_combination_is_found_by_its_name(LoadCombination combination) {
    assertThat(LoadCombination.of(combination.id())).isEqualTo(combination);
  }

  @Test
  void loads_have_the_symbols_of_the_combinations() {
    assertThat(LoadKind.values())
        .extracting(LoadKind::symbol)
        .containsExactly("D", "V", "S", "Lr", "W");
  }

  @Test
  void it_refuses_a_name_it_does_not_know() {
    assertThatThrownBy(() -> LoadCombination.of("D+W"))
        .hasMessage(
            "load combination 'D+W' must be one of D, D+Lr, D+S, D+0.6W, D+0.75(0.6W)+0.75Lr,"
                + " D+0.75(0.6W)+0.75S, 0.6D+0.6W");
    assertThatThrownBy(() -> new DurationFactors(0.9, 1.15, 1.25, 0))
        .hasMessage("load duration factor, wind 0.0 must be above zero and finite");
  }
}
