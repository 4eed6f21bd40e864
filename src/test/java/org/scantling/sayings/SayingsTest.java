package org.scantling.sayings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SayingsTest {
  private static final Sayings REFUSALS = Sayings.of("command-line");

  @Test
  void a_part_whose_blank_has_nothing_to_say_is_left_out() {
    assertThat(REFUSALS.say("rules.unknown", "asked", "post", "maybe", "Maybe posts?"))
        .isEqualTo("'post' is not a rule. Maybe posts? `rules` lists all of them.");
    assertThat(REFUSALS.say("choices.unknown", "asked", "x", "maybe", ""))
        .isEqualTo("'x' is not a list. `choices` names all of them.");
  }

  @Test
  void a_blank_outside_of_brackets_may_be_filled_with_nothing() {
    assertThat(REFUSALS.say("rules.unknown", "asked", "", "maybe", "Maybe posts?"))
        .startsWith("'' is not a rule.");
  }

  @Test
  void a_saying_that_is_not_there_is_a_fault() {
    assertThatThrownBy(() -> REFUSALS.say("nothing"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("rules/words/command-line.csv has no row for 'nothing'");
  }
}
