package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingEaseTest {
  @ParameterizedTest
  @CsvSource({
    "the,1",
    "posts,1",
    "walked,1",
    "leaves,1",
    "breaks,1",
    "eighth,1",
    "square,1",
    "used,1",
    "table,2",
    "timbers,2",
    "carries,2",
    "wanted,2",
    "needed,2",
    "sizes,2",
    "branches,2",
    "bridges,2",
    "being,2",
    "building,2",
    "garden,2",
    "measure,2",
    "structure,2",
    "safely,2",
    "overhead,3",
    "engineer,3",
    "department,3",
    "period,3",
    "area,3",
    "clematis,3",
    "wisteria,4",
    "calculation,4",
    "experience,4",
    "actually,4"
  })
  void syllables_are_counted_as_they_are_spoken(String word, int count) {
    assertThat(ReadingEase.syllables(word)).as(word).isEqualTo(count);
  }

  /** 6 words, 1 sentence, 6 syllables: 206.835 - 1.015 x 6 - 84.6 x 1. */
  @Test
  void the_formula_is_that_of_1948() {
    assertThat(ReadingEase.of("The cat sat on the mat.").score()).isCloseTo(116.145, within(1e-9));
  }

  /** 10 words, 2 sentences, 14 syllables: 206.835 - 1.015 x 5 - 84.6 x 1.4. */
  @Test
  void sentences_and_syllables_both_count() {
    assertThat(ReadingEase.of("The timber is dry. The garden wall has an iron gate.").words())
        .isEqualTo(11);
    assertThat(ReadingEase.of("The timber is dry. The garden wall has a narrow gate.").score())
        .isCloseTo(206.835 - 1.015 * 11 / 2 - 84.6 * 14 / 11, within(1e-9));
  }

  @Test
  void long_words_and_long_sentences_read_hard() {
    double plain =
        ReadingEase.of("We dig the holes deep, so that frost can not lift them.").score();
    double stiff =
        ReadingEase.of(
                "Excavation considerably exceeding anticipated frost penetration necessarily"
                    + " precludes detrimental vertical displacement of foundations.")
            .score();

    assertThat(plain).isGreaterThan(90);
    assertThat(stiff).isLessThan(0);
  }

  @Test
  void figures_and_their_units_flatter_nothing() {
    assertThat(ReadingEase.of("Holes 3 ft 5 in deep instead of 4 ft.").words()).isEqualTo(4);
    assertThat(ReadingEase.of("Posts of 6x6 (5 1/2 in square) here.").words()).isEqualTo(4);
  }
}
