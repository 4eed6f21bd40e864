package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityKindTest {
  // Factors: NIST Special Publication 811, 2008 edition, Appendix B.8 (from memory): 1 lbf/ft2 =
  // 47.88026 Pa,
  // 1 mile/h = 1.609344 km/h = 0.44704 m/s.
  @ParameterizedTest
  @CsvSource({
    "LOAD, 30 psf, 30, 1e-9",
    "LOAD, 30PSF, 30, 1e-9",
    "LOAD, 1.436 kPa, 29.99, 0.005",
    "LOAD, 0.04788026 kN/m², 1, 1e-6",
    "WIND_SPEED, 115 mph, 115, 1e-9",
    "WIND_SPEED, 160.9344 km/h, 100, 1e-9",
    "WIND_SPEED, 44.704 m/s, 100, 1e-9",
    "PERCENT, 3 %, 3, 1e-9",
    "PERCENT, 3.5%, 3.5, 1e-9",
    "DEGREE_DAYS, 1500 F-days, 1500, 1e-9",
    "DEGREE_DAYS, 1500 °F·days, 1500, 1e-9",
    "DEGREE_DAYS, 830 C-days, 1494, 1e-9",
    "TEMPERATURE, 44 F, 44, 1e-9",
    "TEMPERATURE, 7 C, 44.6, 1e-9",
    "TEMPERATURE, -40 °C, -40, 1e-9",
    "FORCE, 200 lb, 200, 1e-9",
    "FORCE, 4.4482216 kN, 1000, 1e-3",
    "AREA, 40 sq ft, 40, 1e-9",
    "AREA, 40 ft2, 40, 1e-9",
    "AREA, 9.290304 m², 100, 1e-6",
  })
  void each_kind_is_read_in_its_units(
      QuantityKind kind, String text, double amount, double tolerance) {
    assertThat(kind.parse(text)).isEqualTo(amount, within(tolerance));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LOAD | 42 in | 42 in (wrong kind of unit: this is a length)",
        "LOAD | 30 | 30 (no unit)",
        "LOAD | 30 psi | 30 psi (unknown unit psi)",
        "WIND_SPEED | 30 psf | 30 psf (wrong kind of unit: this is a load)",
        "WIND_SPEED | 115 furlongs | 115 furlongs (unknown unit furlongs)",
        "PERCENT | 3 F | 3 F (wrong kind of unit: this is a temperature)",
        "DEGREE_DAYS | 44 F | 44 F (wrong kind of unit: this is a temperature)",
        "TEMPERATURE | 1500 F-days | 1500 F-days (wrong kind of unit: this is degree-days)",
        "TEMPERATURE | warm | warm (not a temperature)",
        "PERCENT | three % | three % (not a slope)",
        "PERCENT | --3 % | --3 % (not a slope)",
        "AREA | 40 ft | 40 ft (wrong kind of unit: this is a length)",
        "FORCE | 10 psf | 10 psf (wrong kind of unit: this is a load)",
        "LOAD | 200 lb | 200 lb (wrong kind of unit: this is a force)",
        "LOAD | 1/2 psf | 1/2 psf (not a load)",
      })
  void a_wrong_unit_is_named_for_what_it_is(QuantityKind kind, String text, String found) {
    assertThatThrownBy(() -> kind.parse(text))
        .isInstanceOf(QuantityException.class)
        .hasMessage(found + " must be " + kind.accepted());
  }

  @ParameterizedTest
  @EnumSource(QuantityKind.class)
  void the_example_of_each_kind_is_accepted_by_it(QuantityKind kind) {
    assertThat(kind.parse(kind.example())).isPositive();
    for (String example : kind.accepted().replaceFirst(".*such as ", "").split(", | or ", -1)) {
      assertThat(kind.parse(example)).isPositive();
    }
  }
}
