package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ErrorTextTest {
  @Test
  void the_place_stays_whole_at_the_start_and_the_words_are_wrapped() {
    assertThat(
            ErrorText.of(
                "site.yaml:14: walkway.length: 4000 m must be from 610 mm to 121.920 m. Maybe"
                    + " 40 m, as the other lengths of the file would have it?"))
        .isEqualTo(
            """
            site.yaml:14: walkway.length: 4000 m must be from 610 mm to 121.920 m. Maybe
              40 m, as the other lengths of the file would have it?""");
  }

  @Test
  void a_long_path_has_a_line_of_its_own() {
    assertThat(ErrorText.of("some/very/long/folder/of/a/builder/site.yaml:4: site.soil: is odd."))
        .isEqualTo(
            """
            some/very/long/folder/of/a/builder/site.yaml:4: site.soil:
              is odd.""");
  }

  @Test
  void every_problem_starts_its_own_line() {
    assertThat(ErrorText.of("a.yaml:1: x: is wrong.\na.yaml:2: y: is wrong too.").lines())
        .containsExactly("a.yaml:1: x: is wrong.", "a.yaml:2: y: is wrong too.");
  }

  @Test
  void what_is_set_in_stays_set_in() {
    assertThat(ErrorText.of("Found:\n    one " + "word ".repeat(20)).lines())
        .allMatch(line -> line.length() <= 80)
        .element(2)
        .asString()
        .startsWith("      word");
  }
}
