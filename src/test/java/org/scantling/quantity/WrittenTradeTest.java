package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenTradeTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "5 ft 8 1/2 in|68.5",
        "5 feet 8 1/2 inches|68.5",
        "5 foot 8.5 in.|68.5",
        "5\u2032 8\u00bd\u2033|68.5",
        "5\u2019-8 1/2\u201d|68.5",
        "5-8 1/2|68.5",
        "5'-8\u00bd\"|68.5",
        "8\u00bd ft|102",
        "\u00be in|0.75",
        "6 ft. 2 in.|74",
        "6 feet and 2 inches|74",
        "6'2''|74",
        "84 inches|84",
        "6 yd|216",
        "6\u00a0ft|72",
        "2.5 meters|98.4252",
        "450 millimetres|17.7165",
      })
  void a_length_is_read_as_builders_write_it(String written, double inches) {
    assertThat(Length.parse(written)).isCloseTo(inches, within(1e-4));
  }

  // By hand: 1/12 = 8.3333 %; 1/4 in over 12 in = 2.0833 %; 6 in over 240 in = 2.5 %.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "3 %|3",
        "3 percent|3",
        "1:12|8.33333",
        "1 in 12|8.33333",
        "1 to 12|8.33333",
        "1/4 in per ft|2.08333",
        "1/4\" per foot|2.08333",
        "\u00bc in per ft|2.08333",
        "1/4 in/ft|2.08333",
        "1 in per foot|8.33333",
        "6 in over 20 ft|2.5",
        "6 in in 20 ft|2.5",
        "2 cm per m|2",
        "level|0",
        "flat|0",
      })
  void a_fall_is_read_as_builders_write_it(String written, double percent) {
    assertThat(QuantityKind.PERCENT.parse(written)).isCloseTo(percent, within(1e-4));
  }

  @ParameterizedTest
  @CsvSource({
    "30 lb/sqft, 30",
    "30 lbs per sq ft, 30",
    "30 pounds per square foot, 30",
    "30 PSF, 30"
  })
  void a_load_is_read_with_its_unit_written_out(String written, double psf) {
    assertThat(QuantityKind.LOAD.parse(written)).isEqualTo(psf);
  }

  @ParameterizedTest
  @CsvSource({
    "115 miles per hour, 115",
    "115 m.p.h., 115",
    "185 kmh, 114.9536",
    "185 kph, 114.9536",
    "100 knots, 115.0779"
  })
  void a_wind_is_read_with_its_unit_written_out(String written, double mph) {
    assertThat(QuantityKind.WIND_SPEED.parse(written)).isCloseTo(mph, within(1e-3));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "7-6|7'-6\"",
        "14 ft 2|14 ft 2 in",
        "14' 2|14' 2 in",
        "5' 14\"|6'-2\"",
        "5'-13\"|6'-1\"",
        "5'-12\"|6'-0\"",
        "5' 8|5' 8 in",
        "about 42 in|42 in",
        "1,200 mm|1200 mm",
        "7,5 ft|7.5 ft",
        "ft 24|24 ft",
      })
  void what_is_nearly_a_length_is_offered_as_one_that_can_be_read(String written, String meant) {
    QuantityException refused =
        catchThrowableOfType(QuantityException.class, () -> Length.parse(written));

    assertThat(refused.maybe()).hasValue(meant);
    assertThat(Length.parse(meant)).isPositive();
  }

  @ParameterizedTest
  @CsvSource({"24", "1/4", "8/7 in", "12:0"})
  void what_is_not_clear_stays_refused(String written) {
    assertThat(catchThrowableOfType(QuantityException.class, () -> Length.parse(written)))
        .isNotNull();
    assertThat(
            catchThrowableOfType(
                QuantityException.class, () -> QuantityKind.PERCENT.parse(written)))
        .isNotNull();
  }

  @Property
  void a_fall_of_one_in_so_many_is_the_same_however_it_is_written(
      @ForAll @IntRange(min = 2, max = 400) int run) {
    double percent = QuantityKind.PERCENT.parse("1:" + run);

    assertThat(QuantityKind.PERCENT.parse("1 in " + run)).isEqualTo(percent);
    assertThat(QuantityKind.PERCENT.parse("1 ft over " + run + " ft"))
        .isCloseTo(percent, within(1e-9));
    assertThat(percent * run).isCloseTo(100, within(1e-9));
  }
}
