package org.scantling.causes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Question;

/** Which demand is blamed is judgement of the trade: common practice, no source. */
class BlamedDemandsTest {
  private final BlamedDemands blamed = BlamedDemands.read();

  @ParameterizedTest
  @EnumSource(Question.class)
  void every_question_has_something_to_try_first(Question question) {
    assertThat(blamed.nearest(question)).isNotNull();
  }

  @Test
  void an_answer_is_blamed_on_what_the_site_file_asks() {
    assertThat(blamed.behind(Question.ROW_SPACING)).contains(Demand.CLEAR_WIDTH);
    assertThat(blamed.behind(Question.BAY)).contains(Demand.WALK_LENGTH);
    assertThat(blamed.nearest(Question.HEADER_SIZE)).isEqualTo(Demand.GROUND_SNOW);
    assertThat(blamed.nearest(Question.RAIL_JOINT)).isEqualTo(Demand.WIND_SPEED);
  }

  /** Wind does not make a header longer than what is sold. */
  @Test
  void headers_that_no_length_sold_makes_are_blamed_on_the_length() {
    assertThat(blamed.nearest(Question.HEADER_SPLICE)).isEqualTo(Demand.WALK_LENGTH);
  }

  @Test
  void what_follows_from_other_answers_is_blamed_on_none() {
    assertThat(blamed.behind(Question.CROSSBEAM_SIZE)).isEmpty();
  }
}
