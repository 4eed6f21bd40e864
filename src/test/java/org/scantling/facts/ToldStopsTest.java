package org.scantling.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.scantling.reasons.Question.HEADER_SIZE;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.scantling.engine.SampleFindings;
import org.scantling.reasons.Priority;
import org.scantling.rulebase.Fired;

class ToldStopsTest {
  private static final List<String> SIZES = List.of("4x4", "6x6", "8x8");

  private static List<String> unsure(int floor, Set<String> open, Fired... fired) {
    return ToldStops.of(POST_SIZE, Arrays.asList(fired)).unsure(SIZES, floor, open);
  }

  private static Fired stop(String option, double ratio) {
    return SampleFindings.reject(POST_SIZE, "a", option, ratio);
  }

  @Test
  void nothing_is_unsure_while_a_size_is_left() {
    assertThat(unsure(0, Set.of("4x4"), stop("4x4", 1.2), stop("6x6", 1.4))).isEmpty();
  }

  @Test
  void where_none_is_left_each_that_may_come_closer_than_the_closest_known_is_unsure() {
    assertThat(
            unsure(0, Set.of("4x4", "6x6"), stop("4x4", 1.2), stop("6x6", 1.4), stop("8x8", 1.3)))
        .containsExactly("4x4");
    assertThat(unsure(0, Set.of(), stop("4x4", 1.2), stop("6x6", 1.4), stop("8x8", 1.3))).isEmpty();
  }

  @Test
  void the_highest_stop_of_a_size_counts() {
    assertThat(
            unsure(
                0,
                Set.of("4x4"),
                stop("4x4", 1.2),
                stop("4x4", 1.5),
                stop("6x6", 1.4),
                stop("8x8", 1.4)))
        .isEmpty();
  }

  @Test
  void where_none_is_known_all_open_ones_are_unsure() {
    assertThat(
            unsure(
                0,
                Set.of("4x4", "6x6", "8x8"),
                stop("4x4", 1.2),
                stop("6x6", 1.4),
                stop("8x8", 1.3)))
        .containsExactly("4x4", "6x6", "8x8");
  }

  @Test
  void a_size_below_the_floor_that_nothing_stops_so_far_is_no_way_out_but_may_come_closest() {
    assertThat(unsure(1, Set.of("4x4"), stop("6x6", 1.4), stop("8x8", 1.3))).containsExactly("4x4");
    assertThat(unsure(0, Set.of("4x4"), stop("6x6", 1.4), stop("8x8", 1.3))).isEmpty();
  }

  @Test
  void a_size_that_is_asked_for_is_unsure_and_one_that_is_merely_kept_is_not() {
    assertThat(
            unsure(
                0,
                Set.of("4x4"),
                stop("4x4", 1.2),
                SampleFindings.prefer(POST_SIZE, "b", Priority.ASKED, "4x4")))
        .containsExactly("4x4");
    assertThat(
            unsure(
                0,
                Set.of("4x4"),
                stop("4x4", 1.2),
                SampleFindings.prefer(POST_SIZE, "b", Priority.KEPT, "4x4")))
        .isEmpty();
  }

  @Test
  void findings_on_other_questions_do_not_count() {
    Fired other = SampleFindings.reject(HEADER_SIZE, "a", "8x8", 1.1);
    assertThat(unsure(0, Set.of("4x4"), stop("4x4", 1.2), stop("6x6", 1.4), other)).isEmpty();
  }
}
