package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearMissTest {
  private static final List<String> WORDS =
      List.of(
          "length", "clear-width", "headroom", "4x4", "4x6", "No.1", "No.2", "B", "two-abreast");

  @ParameterizedTest
  @CsvSource({
    "lenght, length",
    "Length, length",
    "clear_width, clear-width",
    "clearwidht, clear-width",
    "head room, headroom",
    "4 X 4, 4x4",
    "no2, No.2",
    "b, B",
    "two abrest, two-abreast",
  })
  void a_slip_of_the_pen_finds_its_word(String written, String meant) {
    assertThat(NearMiss.nearest(written, WORDS)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"4x5", "No.3", "E", "colour", "three-abreast", "''", "' '", "width"})
  void another_thing_is_no_slip(String written) {
    assertThat(NearMiss.nearest(written, WORDS)).isEmpty();
    assertThat(NearMiss.advice(written, WORDS)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"sizes, 'size1,size2'", "ab, 'abc,abd'"})
  void of_two_equally_near_words_none_is_guessed(String written, String words) {
    assertThat(NearMiss.nearest(written, List.of(words.split(",")))).isEmpty();
  }
}
