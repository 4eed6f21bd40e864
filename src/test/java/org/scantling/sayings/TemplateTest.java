package org.scantling.sayings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TemplateTest {
  @Test
  void blanks_are_filled() {
    assertThat(filled("holes {depth} deep.", Map.of("depth", "3'-0\"")))
        .isEqualTo("holes 3'-0\" deep.");
  }

  @Test
  void an_optional_part_goes_when_one_of_its_blanks_stays_empty() {
    Template template = new Template("{a}[, was {b}][{flag} and stays].");
    assertThat(template.filled(name -> Optional.ofNullable(Map.of("a", "4x4").get(name))))
        .isEqualTo("4x4.");
    assertThat(
            template.filled(
                name -> Optional.ofNullable(Map.of("a", "6x6", "b", "4x4", "flag", "").get(name))))
        .isEqualTo("6x6, was 4x4 and stays.");
  }

  @Test
  void brackets_without_a_blank_are_just_brackets() {
    assertThat(filled("a list [ is closed with ]{by}", Map.of("by", ".")))
        .isEqualTo("a list [ is closed with ].");
  }

  @Test
  void what_fills_a_blank_is_taken_as_it_is() {
    assertThat(filled("{a}", Map.of("a", "{b} $1 \\ [x]"))).isEqualTo("{b} $1 \\ [x]");
  }

  @Test
  void a_count_takes_its_noun_in_the_number_it_needs() {
    String text = "{bays|bay|bays} of 4";
    assertThat(filled(text, Map.of("bays", "1"))).isEqualTo("1 bay of 4");
    assertThat(filled(text, Map.of("bays", "10"))).isEqualTo("10 bays of 4");
    assertThat(filled(text, Map.of("bays", "one"))).isEqualTo("one bay of 4");
  }

  @Test
  void words_agree_with_a_count_that_they_need_not_say() {
    String text = "{checks?One check|# checks} of 33 {checks?fails|fail}";
    assertThat(filled(text, Map.of("checks", "1"))).isEqualTo("One check of 33 fails");
    assertThat(filled(text, Map.of("checks", "12"))).isEqualTo("12 checks of 33 fail");
  }

  @Test
  void a_blank_may_be_there_or_not_and_say_nothing() {
    String text = "{size}[{new!}, new here].";
    assertThat(filled(text, Map.of("size", "4x4", "new", ""))).isEqualTo("4x4, new here.");
    assertThat(filled(text, Map.of("size", "4x4"))).isEqualTo("4x4.");
  }

  @Test
  void a_sentence_ends_once() {
    assertThat(filled("{a}.", Map.of("a", "One end."))).isEqualTo("One end.");
    assertThat(filled("{a}", Map.of("a", "and so on, ..."))).isEqualTo("and so on, ...");
  }

  @Test
  void a_needed_blank_that_stays_empty_is_refused() {
    assertThatThrownBy(() -> filled("so {deep}", Map.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("nothing fills {deep} in 'so {deep}'");
  }

  private static String filled(String text, Map<String, String> values) {
    return new Template(text).filled(name -> Optional.ofNullable(values.get(name)));
  }
}
