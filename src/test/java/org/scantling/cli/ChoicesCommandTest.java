package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChoicesCommandTest {
  @Test
  void the_lists_are_named_with_the_keys_that_take_their_words() {
    assertThat(Run.of("choices").endedWith(ExitStatus.ANSWERED).out())
        .contains("soil ", "site.soil", "wind-basis", "site.climate.wind-basis", "choices soil");
  }

  @ParameterizedTest
  @ValueSource(strings = {"soil", "soils", "site.soil"})
  void one_list_tells_each_word_and_how_to_tell_it_on_the_spot(String asked) {
    String said = Run.of("choices", asked).endedWith(ExitStatus.ANSWERED).out();

    assertThat(said).contains("- clay: clay, silt and their mixtures", "After ASTM D2488");
    assertThat(said.replaceAll("\\s+", " "))
        .contains("after 2 hours silt", "It goes with site.soil");
    assertThat(said.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_program_reads_them_as_JSON() {
    assertThat(Run.of("choices", "exposure", "--format", "json").endedWith(0).out())
        .contains("\"schema\" : \"scantling/choices/1\"", "\"key\" : \"site.climate.exposure\"")
        .contains("\"value\" : \"B\"", "\"kind\" : \"standard\"");
  }

  @Test
  void a_list_that_is_none_is_refused_with_the_nearest() {
    assertThat(Run.of("choices", "exposur").endedWith(ExitStatus.WRONG_INPUT).err())
        .contains("'exposur' is not a list. Maybe exposure?");
  }
}
