package org.scantling.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpliceTest {
  @ParameterizedTest
  @CsvSource({
    "3+3+3+3, 16, 3+3+3+3",
    "3+3+3+3+3+3+3+3, 16, 3+3+3+3+3",
    "4+3+3+3+3+3+3+2, 16, 4+3+3+3+2",
    "1+1+1+1+1+1, 4, 1+1+1+1",
    "40, 16, 16",
    "12, 16, 12",
  })
  void a_long_row_is_shortened_in_its_middle_and_ends_alike(
      String whole, int most, String shortened) {
    assertThat(Splice.of(whole).shortened(most).way()).isEqualTo(shortened);
  }
}
