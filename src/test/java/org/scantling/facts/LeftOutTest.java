package org.scantling.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.scantling.reasons.Question.HEADER_SIZE;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.engine.SampleFindings;
import org.scantling.reasons.Priority;

class LeftOutTest {
  private static final List<String> SIZES = List.of("4x4", "6x6", "8x8");

  private final LeftOut leftOut = new LeftOut();

  @Test
  void nothing_is_missed_where_the_rules_let_the_largest_stand_that_they_were_shown() {
    leftOut.add(POST_SIZE, SIZES, 2);

    assertThat(leftOut.missed(List.of(SampleFindings.reject(POST_SIZE, "a", "4x4", 1.2))))
        .isFalse();
    assertThat(leftOut.missed(List.of(SampleFindings.reject(HEADER_SIZE, "a", "6x6", 1.2))))
        .isFalse();
    assertThat(leftOut.missed(List.of(SampleFindings.prefer(POST_SIZE, "a", Priority.KEPT, "6x6"))))
        .isFalse();
  }

  @Test
  void a_larger_one_is_missed_where_the_rules_stop_the_largest_they_were_shown() {
    leftOut.add(POST_SIZE, SIZES, 2);

    assertThat(leftOut.missed(List.of(SampleFindings.reject(POST_SIZE, "a", "6x6", 1.1)))).isTrue();
  }

  @Test
  void a_larger_one_is_missed_where_the_rules_ask_for_it() {
    leftOut.add(POST_SIZE, SIZES, 1);

    assertThat(leftOut.missed(List.of(SampleFindings.prefer(POST_SIZE, "a", Priority.KEPT, "8x8"))))
        .isTrue();
  }

  @Test
  void nothing_is_missed_where_all_were_laid_out() {
    leftOut.add(POST_SIZE, SIZES, 3);

    assertThat(leftOut.missed(List.of(SampleFindings.reject(POST_SIZE, "a", "8x8", 2)))).isFalse();
  }
}
