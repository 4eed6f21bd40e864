package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.reasons.Question.POST_HEIGHT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.answers.Rounding;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Reason;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBaseFault;

/** How a number is settled among bounds and wishes, and which of them is told as the reason. */
class NumberResolverTest {
  private static final Fired KEPT = wish("kept", Priority.KEPT, 84);
  private static final Fired LOW = SampleFindings.atLeast(POST_HEIGHT, "low", 80);
  private static final Fired HIGH = SampleFindings.atMost(POST_HEIGHT, "high", 90);

  @Test
  void a_wish_inside_the_bounds_is_the_answer_and_the_reason() {
    is(84, "kept", LOW, HIGH, KEPT);
  }

  @Test
  void a_wish_right_on_a_bound_is_still_the_reason() {
    is(80, "kept", LOW, HIGH, wish("kept", Priority.KEPT, 80));
    is(90, "kept", LOW, HIGH, wish("kept", Priority.KEPT, 90));
  }

  @Test
  void a_wish_too_low_is_lifted_by_the_greatest_least() {
    is(87, "higher", LOW, SampleFindings.atLeast(POST_HEIGHT, "higher", 87), HIGH, KEPT);
  }

  @Test
  void a_wish_too_high_is_lowered_by_the_smallest_most() {
    is(82, "lower", LOW, SampleFindings.atMost(POST_HEIGHT, "lower", 82), HIGH, KEPT);
  }

  @Test
  void without_a_wish_the_least_is_taken_else_the_most() {
    is(80, "low", HIGH, LOW);
    is(90, "high", HIGH);
  }

  @Test
  void what_was_asked_outweighs_the_trade_and_the_trade_outweighs_what_stood() {
    Fired trade = wish("trade", Priority.TRADE, 83);
    Fired asked = wish("asked", Priority.ASKED, 82);

    is(83, "trade", KEPT, trade);
    is(82, "asked", KEPT, asked, trade);
  }

  @Test
  void of_two_equal_wishes_the_greater_is_taken() {
    is(88, "more", wish("more", Priority.TRADE, 88), wish("less", Priority.TRADE, 81));
    is(88, "more", wish("less", Priority.TRADE, 81), wish("more", Priority.TRADE, 88));
  }

  @Test
  void every_finding_is_told_once_the_governing_one_first() {
    Resolution.Answered answered = answered(resolve(Rounding.NONE, KEPT, HIGH, LOW));

    assertThat(SampleFindings.rules(answered.reasons())).containsExactly("kept", "high", "low");
    assertThat(answered.reasons())
        .extracting(Reason::governing)
        .containsExactly(true, false, false);
    assertThat(answered.reasons().get(1).because()).containsExactly("what high read");
    assertThat(answered.rejected()).isEmpty();
  }

  @Test
  void bounds_that_cross_have_no_answer_and_both_are_told() {
    Resolution resolution =
        resolve(Rounding.NONE, LOW, SampleFindings.atMost(POST_HEIGHT, "under", 79), KEPT);

    assertThat(resolution).isInstanceOf(Resolution.Unanswerable.class);
    Resolution.Unanswerable none = (Resolution.Unanswerable) resolution;
    assertThat(none.question()).hasValue(POST_HEIGHT);
    assertThat(none.closest().note().id()).isEqualTo("low");
    assertThat(none.closest().governing()).isTrue();
    assertThat(SampleFindings.rules(none.rejected())).containsExactly("under");
  }

  @Test
  void bounds_that_meet_leave_just_that_number_whatever_the_last_bits_say() {
    double justUnder = 80 * (1 - 1e-12);

    assertThat(number(resolve(Rounding.NONE, LOW, SampleFindings.atMost(POST_HEIGHT, "meets", 80))))
        .isEqualTo(80);
    assertThat(
            number(
                resolve(
                    Rounding.NONE, LOW, SampleFindings.atMost(POST_HEIGHT, "meets", justUnder))))
        .isEqualTo(80);
  }

  @Test
  void the_answer_is_rounded_once_after_everything_is_weighed() {
    Fired odd = SampleFindings.atLeast(POST_HEIGHT, "odd", 84.01);

    assertThat(number(resolve(Rounding.UP_TO_SIXTEENTH, KEPT, odd))).isEqualTo(84.0625);
    assertThat(number(resolve(Rounding.UP_TO_INCH, KEPT, odd))).isEqualTo(85);
  }

  @Test
  void rounding_does_not_carry_the_answer_past_a_bound() {
    Fired most = SampleFindings.atMost(POST_HEIGHT, "most", 83.99);
    Fired least = SampleFindings.atLeast(POST_HEIGHT, "least", 84.01);

    assertThat(number(resolve(Rounding.UP_TO_SIXTEENTH, KEPT, most))).isEqualTo(83.9375);
    assertThat(number(resolve(Rounding.DOWN_TO_SIXTEENTH, KEPT, least))).isEqualTo(84.0625);
  }

  @Test
  void between_bounds_closer_than_a_step_the_answer_stays_unrounded() {
    Fired least = SampleFindings.atLeast(POST_HEIGHT, "least", 84.01);
    Fired most = SampleFindings.atMost(POST_HEIGHT, "most", 84.02);

    assertThat(number(resolve(Rounding.UP_TO_SIXTEENTH, least, most)))
        .isCloseTo(84.01, within(1e-9));
  }

  @Test
  void a_question_without_a_finding_is_a_fault_of_the_rules() {
    assertThatThrownBy(() -> resolve(Rounding.NONE))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage("no rule has anything to say about post.height");
  }

  private static Fired wish(String rule, Priority priority, double number) {
    return SampleFindings.prefer(POST_HEIGHT, rule, priority, number);
  }

  private static void is(double number, String governing, Fired... findings) {
    Resolution resolution = resolve(Rounding.NONE, findings);

    assertThat(number(resolution)).isEqualTo(number);
    assertThat(answered(resolution).reasons().get(0).note().id()).isEqualTo(governing);
  }

  private static Resolution resolve(Rounding rounding, Fired... findings) {
    return new NumberResolver(POST_HEIGHT, rounding, List.of(findings)).resolve();
  }

  private static double number(Resolution resolution) {
    return answered(resolution).answer().number();
  }

  private static Resolution.Answered answered(Resolution resolution) {
    return (Resolution.Answered) resolution;
  }
}
