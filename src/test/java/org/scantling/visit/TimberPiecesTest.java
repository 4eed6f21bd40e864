package org.scantling.visit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimberPiecesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "seven 2x4x8           | 7, 2x4, 8 ft",
        "7 2x4x8               | 7, 2x4, 8 ft",
        "10 ft 4x4 posts       | no-count, 4x4, 10 ft",
        "six 10 ft 4x4 posts   | 6, 4x4, 10 ft",
        "6 10-ft 4x4s          | 6, 4x4, 10 ft",
        "6 ft header           | no-count, no-size, 6 ft",
        "4x4                   | no-count, 4x4, no-length",
        "two 4 x 6 x 14        | 2, 4x6, 14 ft",
        "four 2x8, 16 ft       | 4, 2x8, 16 ft",
        "2x6 x 12'-6\"         | no-count, 2x6, 12'-6\"",
        "two 2x4s, 7 ft 6 in   | 2, 2x4, 7 ft 6 in",
        "nine 45x145x3.6       | 9, 45x145, 3.6 m",
        "nine 45x145x3600      | 9, 45x145, 3600 mm",
        "nine 45x145 3600 mm   | 9, 45x145, 3600 mm",
        "Twelve 2X6X10         | 12, 2x6, 10 ft",
      })
  void timber_is_read_as_one_asks_for_it_at_a_yard(String line, String kept) {
    TimberPieces read = TimberPieces.parse(line).orElseThrow();

    assertThat(read.kept()).isEqualTo(kept);
    assertThat(read.sound()).isTrue();
    assertThat(TimberPieces.isKept(kept)).isTrue();
    assertThat(TimberPieces.ofKept(kept)).isEqualTo(read);
  }

  @ParameterizedTest
  @ValueSource(strings = {"posts", "seven", "", "?", "12"})
  void what_names_neither_a_size_nor_a_length_is_no_timber(String line) {
    assertThat(TimberPieces.parse(line)).isEmpty();
  }

  @Test
  void a_length_that_is_on_no_tape_is_not_taken() {
    assertThat(TimberPieces.parse("two 2x4, 7 ft 13 in").orElseThrow().sound()).isFalse();
  }
}
