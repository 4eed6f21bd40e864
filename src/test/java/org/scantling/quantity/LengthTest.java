package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "6 ft | 72",
        "6ft | 72",
        "6 1/2 ft | 78",
        "1 foot | 12",
        "6 feet | 72",
        "5'-8 1/2\" | 68.5",
        "5'-8-1/2\" | 68.5",
        "5' 8\" | 68",
        "5'8\" | 68",
        "5’-8” | 68",
        "5′ 8″ | 68",
        "5 ft 8 1/2 in | 68.5",
        "5 ft 11.5 in | 71.5",
        "5'-0 1/2\" | 60.5",
        "5'-1/2\" | 60.5",
        "42 in | 42",
        "42 IN | 42",
        "0.5 in | 0.5",
        "3/4 in | 0.75",
        "8 1/2 in | 8.5",
        "8 1/2\" | 8.5",
        "-12 ft | -144",
        "2.54 cm | 1",
        "45 cm | 17.716535433070867",
        "1.8 m | 70.86614173228347",
        "450 mm | 17.716535433070867",
      })
  void trade_and_metric_texts_are_read_as_inches(String text, double inches) {
    assertThat(Length.parse(text)).isEqualTo(inches, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "6 | 6 (no unit)",
        "-6.5 | -6.5 (no unit)",
        "1e3 | 1e3 (no unit)",
        "6 rd | 6 rd (unknown unit rd)",
        "six feet | six feet (not a length)",
        "--6 ft | --6 ft (not a length)",
        "+-6 ft | +-6 ft (not a length)",
        "5'--8\" | 5'--8\" (not a length)",
        "5'-11 63/64 | 5'-11 63/64 (not a length)",
        "5.5' 8\" | 5.5' 8\" (not a length)",
        "8 1/0 in | 8 1/0 in (1/0 is not on a tape: halves to 64ths are)",
        "8 1/3 in | 8 1/3 in (1/3 is not on a tape: halves to 64ths are)",
        "8 4/4 in | 8 4/4 in (4/4 is not a proper fraction)",
        "8 5/4 in | 8 5/4 in (5/4 is not a proper fraction)",
        "8 0/4 in | 8 0/4 in (0/4 is not a proper fraction)",
        "8.5 1/2 in | 8.5 1/2 in (decimals and a fraction together)",
        "6 ft 30 cm | 6 ft 30 cm (not a length)",
        "30 psf | 30 psf (wrong kind of unit: this is a load)",
        "3 % | 3 % (wrong kind of unit: this is a slope)",
        "NaN ft | NaN ft (not a length)",
        ".inf | .inf (not a length)",
        "1e3 ft | 1e3 ft (not a length)",
        "9999999999 ft | 9999999999 ft (not a length)",
      })
  void what_is_no_length_is_refused_with_what_is_accepted(String text, String found) {
    assertThatThrownBy(() -> Length.parse(text))
        .isInstanceOf(QuantityException.class)
        .hasMessage(
            found
                + " must be a length with its unit, such as 6 ft, 5'-8 1/2\", 42 in, 1.8 m or 450"
                + " mm");
  }

  @Test
  void a_decimal_comma_is_refused_with_the_likely_meaning() {
    assertThatThrownBy(() -> Length.parse("1,8 m"))
        .hasMessageStartingWith("1,8 m (decimal comma) must be a length")
        .hasMessageEndingWith("Maybe 1.8 m?");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   "})
  void an_empty_text_is_refused(String text) {
    assertThatThrownBy(() -> Length.parse(text))
        .hasMessageStartingWith("nothing (empty text) must be a length with its unit");
  }

  @Test
  void a_long_text_is_shortened_in_the_message() {
    assertThatThrownBy(() -> Length.parse("9".repeat(50_000)))
        .hasMessageContaining("9".repeat(40) + "... (not a length)")
        .message()
        .hasSizeLessThan(200);
  }

  @Test
  void a_text_that_is_mostly_spaces_is_refused_without_much_ado() {
    assertThatThrownBy(() -> Length.parse("5'" + " ".repeat(500_000) + "8\""))
        .hasMessageContaining("(not a length) must be a length");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "68.5 | 5'-8 1/2\" | 68 1/2 in | 1.740 m",
        "8.5 | 8 1/2\" | 8 1/2 in | 216 mm",
        "0.5 | 1/2\" | 1/2 in | 13 mm",
        "0 | 0\" | 0 in | 0 mm",
        "72 | 6'-0\" | 72 in | 1.829 m",
        "60.0625 | 5'-0 1/16\" | 60 1/16 in | 1.526 m",
        "11.97 | 1'-0\" | 12 in | 304 mm",
        "11.96 | 11 15/16\" | 11 15/16 in | 304 mm",
        "-68.5 | -5'-8 1/2\" | -68 1/2 in | -1.740 m",
        "-0.001 | 0\" | 0 in | 0 mm",
        "17.71653 | 1'-5 11/16\" | 17 11/16 in | 450 mm",
      })
  void inches_print_as_trade_fractions_and_metric(
      double inches, String feet, String plain, String metric) {
    assertThat(Length.feetAndInches(inches)).isEqualTo(feet);
    assertThat(Length.inches(inches)).isEqualTo(plain);
    assertThat(Length.metric(inches)).isEqualTo(metric);
  }

  @Test
  void what_is_not_finite_is_not_printed() {
    assertThatThrownBy(() -> Length.feetAndInches(Double.NaN))
        .hasMessage("length NaN in must be finite and below 1e9");
    assertThatThrownBy(() -> Length.metric(Double.POSITIVE_INFINITY))
        .hasMessage("length Infinity in must be finite and below 1e9");
  }

  @Test
  void every_sixteenth_from_nothing_to_sixty_feet_comes_back_exactly() {
    for (int parts = 0; parts <= 60 * 12 * 16; parts++) {
      double inches = parts / 16.0;
      assertThat(Length.parse(Length.feetAndInches(inches))).isEqualTo(inches);
      assertThat(Length.parse(Length.inches(inches))).isEqualTo(inches);
    }
  }

  @Test
  void a_handy_length_has_a_round_number_on_a_metric_tape() {
    // 2 in is 50.8 mm, 6 in 152.4, 12 in 304.8, 36 in 914.4; an eighth has no round number near.
    assertThat(Length.metric(Length.handyMetric(2))).isEqualTo("50 mm");
    assertThat(Length.metric(Length.handyMetric(6))).isEqualTo("150 mm");
    assertThat(Length.metric(Length.handyMetric(12))).isEqualTo("300 mm");
    assertThat(Length.metric(Length.handyMetric(36))).isEqualTo("900 mm");
    assertThat(Length.handyMetric(0.125)).isEqualTo(0.125);
  }
}
