package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Isolated("sets the locale of the whole program")
class MeasureTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "INCH | 68.5 | 5'-8 1/2\" | 1.740 m",
        "FOOT | 7.5 | 7'-6\" | 2.286 m",
        "POUND | 1234.4 | 1234 lb | 5.49 kN",
        "INCH_POUND | 12345.6 | 12346 in-lb | 1.39 kN·m",
        "POUND_PER_FOOT | 52.26 | 52.3 lb/ft | 0.76 kN/m",
        "PSF | 22.55 | 22.6 psf | 1.08 kPa",
        "PSF | 30 | 30 psf | 1.44 kPa",
        "PSI | 1450.4 | 1450 psi | 10 MPa",
        "PSI | 1400000 | 1400000 psi | 9653 MPa",
        "PCF | 36 | 36 pcf | 577 kg/m³",
        "PSF_PER_FOOT | 150 | 150 psf/ft | 23.6 kPa/m",
        "MPH | 115 | 115 mph | 51.4 m/s",
        "ZONE | 5 | 5 | 5",
        "ZONE | 5.5 | 5b | 5b",
        "DEGREE | 12.34 | 12.3° | 12.3°",
        "F_DAYS | 1500 | 1500 °F·days | 833 °C·days",
        "PERCENT | 3 | 3 % | 3 %",
        "YEAR | 2011 | 2011 | 2011",
        "COUNT | 7 | 7 | 7",
        "COUNT | 0.333 | 0.33 | 0.33",
        "RATIO | 0.876 | 0.88 | 0.88",
        "RATIO | 1 | 1.00 | 1.00",
        "PSF | -0.01 | 0 psf | 0 kPa",
      })
  void measures_print_as_the_trade_states_them(
      Unit unit, double amount, String imperial, String metric) {
    assertThat(MeasureText.imperial(new Measure(amount, unit))).isEqualTo(imperial);
    assertThat(MeasureText.metric(new Measure(amount, unit))).isEqualTo(metric);
  }

  @Test
  void a_percentage_agrees_with_the_two_lengths_beside_it() {
    // 1.5034 in over 1.3667 in is 10 %; 1 1/2 in over 1 3/8 in would be 9 %, 1 1/2 over 1 23/64 10
    // %.
    Measure swayed = Measure.inches(1.5034);
    Measure allowed = Measure.inches(82.0 / 60);
    assertThat(MeasureText.apart(swayed, allowed, UnitSystem.IMPERIAL))
        .containsExactly("1 1/2\"", "1 23/64\"");
    // 1.5 in of 1.375 in is 9 % in sixteenths already: no finer than it takes.
    assertThat(MeasureText.apart(Measure.inches(1.5), Measure.inches(1.375), UnitSystem.IMPERIAL))
        .containsExactly("1 1/2\"", "1 3/8\"");
  }

  @Test
  void a_ratio_just_over_the_limit_never_prints_as_the_limit() {
    assertThat(MeasureText.imperial(Measure.ratio(1.0004))).isEqualTo("1.0004");
    assertThat(MeasureText.imperial(Measure.ratio(1.04))).isEqualTo("1.04");
    assertThat(MeasureText.imperial(Measure.ratio(1 + 5e-10))).isEqualTo("1.00");
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void no_locale_of_the_machine_changes_the_text(Unit unit) {
    Locale before = Locale.getDefault();
    try {
      String root = MeasureText.metric(new Measure(1234.56, unit));
      Locale.setDefault(Locale.GERMANY);
      assertThat(MeasureText.metric(new Measure(1234.56, unit)))
          .isEqualTo(root)
          .doesNotContain(",");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void two_lengths_that_a_tape_hardly_tells_apart_are_printed_finer() {
    assertThat(apart(0.3, 0.33)).containsExactly("5/16\"", "11/32\"");
    assertThat(apart(68.5, 68.53)).containsExactly("5'-8 1/2\"", "5'-8 17/32\"");
    assertThat(apart(12.01, 12)).containsExactly("1'-0 1/64\"", "1'-0\"");
    assertThat(apart(1, 1.25)).containsExactly("1\"", "1 1/4\"");
  }

  @Test
  void what_nobody_can_tell_apart_is_printed_as_ever() {
    assertThat(apart(0.3125, 0.3126)).containsExactly("5/16\"", "5/16\"");
  }

  @Test
  void millimetres_and_loads_are_told_apart_by_decimals() {
    assertThat(MeasureText.apart(Measure.inches(0.3), Measure.inches(0.31), UnitSystem.METRIC))
        .containsExactly("7.6 mm", "7.9 mm");
    assertThat(
            MeasureText.apart(
                new Measure(100.2, Unit.POUND), new Measure(99.8, Unit.POUND), UnitSystem.IMPERIAL))
        .containsExactly("100.2 lb", "99.8 lb");
  }

  @Test
  void a_small_moment_keeps_its_digits_in_metric() {
    // 39 in-lb x 0.112985 = 4.406 N·m; 6621 in-lb = 0.748 kN·m.
    assertThat(MeasureText.metric(new Measure(39, Unit.INCH_POUND))).isEqualTo("4.4 N·m");
    assertThat(MeasureText.metric(new Measure(6621, Unit.INCH_POUND))).isEqualTo("0.75 kN·m");
    assertThat(MeasureText.metric(new Measure(0, Unit.INCH_POUND))).isEqualTo("0 N·m");
  }

  private static java.util.List<String> apart(double oneIn, double otherIn) {
    return MeasureText.apart(Measure.inches(oneIn), Measure.inches(otherIn), UnitSystem.IMPERIAL);
  }
}
