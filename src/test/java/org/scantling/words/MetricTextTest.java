package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts of tables in metric: 1 lb is 4.4482 N, 1 lb-ft 1.3558 N·m, 1 in 25.4 mm. */
class MetricTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "two 1/2 x 10 in lag screws|two 12.7 x 254 mm lag screws",
        "rated for at least 1200 lb of lift|rated for at least 5.4 kN of lift",
        "at least 600 lb-ft of moment, 1000 lb of lift|at least 0.9 kN·m of moment, 4.5 kN of lift",
        "3000 lb-ft|4.1 kN·m",
        "turning no more than 1 in 200 at that moment|turning no more than 1 in 200 at that moment",
      })
  void lengths_are_rounded_and_ratings_never_down(String text, String metric) {
    assertThat(MetricText.of(text)).isEqualTo(metric);
  }
}
