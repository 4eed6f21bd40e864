package org.scantling.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A small gate by pencil: posts 4x4 (3 1/2 in), headers 4x6, crossbeams 2x6. */
class WorkedOutTest {
  private static final Visit VISIT = Asking.visit(VisitKind.BASE);

  private static Map<String, String> gate() {
    Map<String, String> told = new HashMap<>();
    told.put("base-title", "Gate");
    told.put("posts", "six 4x4x10");
    told.put("standing", "embedded");
    told.put("height", "7 ft 2 in");
    told.put("long-by", "ends");
    told.put("over-ends", "12 ft 3 in");
    told.put("wide-by", "clear");
    told.put("wide", "5 ft");
    told.put("header-style", "on-top");
    told.put("headers", "two 4x6x14");
    told.put("crossbeams", "seven 2x6x8");
    return told;
  }

  @Test
  void what_of_a_post_is_not_above_the_ground_is_in_it() {
    // 10 ft = 120 in, less 86 in.
    assertWorked("embedment", gate(), "2 ft 10 in", "10 ft", "7 ft 2 in");
  }

  @Test
  void a_post_on_a_bracket_says_nothing_of_the_ground() {
    Map<String, String> told = gate();
    told.put("standing", "bracket");

    assertThat(worked("embedment", told)).isNull();
  }

  @Test
  void six_posts_stand_round_two_bays() {
    assertWorked("base-bays", gate(), "2", "6 posts");
  }

  @Test
  void an_odd_number_of_posts_stands_round_none() {
    Map<String, String> told = gate();
    told.put("posts", "five 4x4x10");

    assertThat(worked("base-bays", told)).isNull();
  }

  @Test
  void a_bay_is_what_is_left_over_all_less_a_post_shared() {
    // (147 - 3.5) / 2 = 71.75 in
    assertWorked("bay", gate(), "5 ft 11 3/4 in", "12 ft 3 in", "3 1/2 in", "2 bays");
  }

  @Test
  void the_rows_are_a_post_farther_apart_than_the_way_between_them() {
    assertWorked("row-spacing", gate(), "5 ft 3 1/2 in", "5 ft between the posts");
  }

  @Test
  void the_rows_are_a_post_nearer_than_their_outsides() {
    Map<String, String> told = gate();
    told.put("wide-by", "outside");

    assertWorked("row-spacing", told, "4 ft 8 1/2 in", "over the posts");
  }

  @Test
  void a_header_runs_out_by_what_it_is_longer_than_the_posts_at_both_ends() {
    // (168 - 147) / 2 = 10.5 in
    assertWorked("header-overhang", gate(), "10 1/2 in", "14 ft", "12 ft 3 in");
  }

  @Test
  void headers_in_pieces_say_nothing_of_their_overhang() {
    Map<String, String> told = gate();
    told.put("headers", "four 4x6x8");

    assertThat(worked("header-overhang", told)).isNull();
  }

  @Test
  void a_header_too_short_for_its_posts_is_not_worked_with() {
    Map<String, String> told = gate();
    told.put("headers", "two 4x6x10");

    assertThat(worked("header-overhang", told)).isNull();
  }

  @Test
  void a_tail_is_half_of_what_the_crossbeam_is_longer_than_the_headers_are_wide() {
    // 63.5 + 3.5 = 67 in over the headers; (96 - 67) / 2 = 14.5 in
    assertWorked("crossbeam-overhang", gate(), "1 ft 2 1/2 in", "8 ft", "5 ft 7 in");
  }

  @Test
  void a_pair_of_headers_carries_the_crossbeams_at_its_outer_faces() {
    Map<String, String> told = gate();
    told.put("header-style", "paired");
    told.put("headers", "four 2x8x14");

    // 63.5 + 3.5 + 2 x 1.5 = 70 in over the boards; (96 - 70) / 2 = 13 in
    assertWorked("crossbeam-overhang", told, "1 ft 1 in", "5 ft 10 in");
  }

  @Test
  void two_side_by_side_at_each_pair_of_posts_count_once() {
    Map<String, String> told = gate();
    told.put("standing", "bracket");
    told.put("embedment", "3 ft");
    told.put("crossbeams", "ten 2x6x8");
    told.put("at-posts", "doubled");

    // Three pairs of posts.
    assertWorked("crossbeam-count", told, "7", "10 pieces");
  }

  @Test
  void the_number_of_crossbeams_tells_how_far_they_are_apart() {
    VisitAnswers answers = Asking.upTo(VISIT, "crossbeam-count", gate());
    VisitRow row = VISIT.next(answers).orElseThrow();

    // Seven over two bays of 71 3/4 in: every third of a bay, 23 11/12 in, none past the posts,
    // where 1 3/4 + 10 1/2 - 3/4 = 11 1/2 in are left.
    assertThat(VISIT.answer(row, "", answers))
        .isInstanceOfSatisfying(
            VisitTurn.Taken.class,
            taken ->
                assertThat(taken.read())
                    .hasValueSatisfying(
                        said -> assertThat(said).contains("1 ft 11 15/16 in apart")));
  }

  @Test
  void a_number_of_crossbeams_that_does_not_go_up_in_the_bays_is_told() {
    Map<String, String> told = gate();
    told.put("crossbeams", "eight 2x6x8");
    VisitAnswers answers = Asking.upTo(VISIT, "crossbeam-count", told);

    // Two bays of n spaces have 2n + 1 places, and as many more at one end as at the other.
    assertThat(VISIT.answer(VISIT.next(answers).orElseThrow(), "", answers))
        .isInstanceOfSatisfying(
            VisitTurn.Taken.class,
            taken ->
                assertThat(taken.read().orElseThrow()).contains("8 do not come out even over 2"));
  }

  @Test
  void what_is_worked_out_stands_in_the_file_as_such_and_what_was_taped_as_told() {
    Map<String, String> told = gate();
    told.put("embedment", "3 ft");
    String text = VisitText.of(VISIT, Asking.upTo(VISIT, "", told));

    assertThat(text)
        .containsPattern("embedment: 3 ft +# depth below the ground; as told")
        .containsPattern("center to center along the walk; worked out\\n  bay: 5 ft 11 3/4 in");
  }

  private static void assertWorked(
      String question, Map<String, String> told, String answer, String... how) {
    WorkedAnswer worked = worked(question, told);
    assertThat(worked).isNotNull();
    assertThat(worked.answer()).isEqualTo(answer);
    assertThat(worked.how()).contains(how);
  }

  private static WorkedAnswer worked(String question, Map<String, String> told) {
    VisitAnswers answers = Asking.upTo(VISIT, question, told);
    return VISIT.worked(VISIT.next(answers).orElseThrow(), answers).orElse(null);
  }
}
