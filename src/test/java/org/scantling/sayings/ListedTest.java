package org.scantling.sayings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ListedTest {
  @Test
  void the_last_of_several_words_comes_behind_or() {
    assertThat(Listed.or(List.of("a", "b", "c"))).isEqualTo("a, b or c");
    assertThat(Listed.or(List.of("a", "b"))).isEqualTo("a or b");
  }

  @Test
  void one_word_stands_by_itself_and_none_says_nothing() {
    assertThat(Listed.or(List.of("a"))).isEqualTo("a");
    assertThat(Listed.or(List.of())).isEmpty();
  }
}
