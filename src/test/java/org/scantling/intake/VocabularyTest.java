package org.scantling.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;

class VocabularyTest {
  @Test
  void words_are_listed_in_one_order_whatever_set_they_came_in() {
    assertThat(Example.VOCABULARY.soils())
        .containsExactly("bedrock", "clay", "foliated-rock", "sand", "sandy-gravel");
  }

  @Test
  void an_empty_set_would_refuse_every_file_and_is_refused_itself() {
    Set<String> words = Set.of("x");
    assertThatThrownBy(() -> new Vocabulary(words, words, Set.of(), words, words, words))
        .hasMessage("a vocabulary must have at least one word in each set");
  }
}
