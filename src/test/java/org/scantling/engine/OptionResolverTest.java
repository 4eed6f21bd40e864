package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Reason;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBaseFault;

/** How one of several options is settled on, and what is told as the reason. */
class OptionResolverTest {
  private static final List<String> SIZES = List.of("4x4", "4x6", "6x6", "8x8");
  private static final Fired KEPT = wish("kept", Priority.KEPT, "4x4");

  @Test
  void a_wish_that_nothing_rejects_is_the_answer_and_the_reason() {
    is("4x4", "kept", 0, KEPT);
    is("4x4", "kept", 0, KEPT, reject("tall", "4x6", 1.5));
  }

  @Test
  void a_rejected_wish_gives_way_to_the_next_above_and_the_last_rejection_governs() {
    is("4x6", "tall", 0, KEPT, reject("tall", "4x4", 1.2));
    is("6x6", "crowded", 0, KEPT, reject("tall", "4x4", 1.2), reject("crowded", "4x6", 1.1));
  }

  @Test
  void what_stopped_the_option_that_was_asked_for_governs() {
    is(
        "6x6",
        "tall",
        0,
        wish("asked", Priority.ASKED, "4x4"),
        reject("tall", "4x4", 1.2),
        reject("crowded", "4x6", 1.1));
  }

  @Test
  void where_nothing_above_is_left_the_next_below_is_taken() {
    is(
        "4x6",
        "heavy",
        0,
        wish("asked", Priority.ASKED, "6x6"),
        reject("heavy", "6x6", 1.1),
        reject("huge", "8x8", 1.3));
  }

  @Test
  void without_a_wish_the_smallest_that_is_left_is_taken_for_what_stopped_the_one_below() {
    is("4x6", "tall", 0, reject("tall", "4x4", 1.2));
  }

  @Test
  void what_was_asked_outweighs_the_trade_and_the_trade_outweighs_what_stood() {
    Fired trade = wish("trade", Priority.TRADE, "6x6");
    Fired asked = wish("asked", Priority.ASKED, "4x6");

    is("6x6", "trade", 0, KEPT, trade);
    is("4x6", "asked", 0, asked, KEPT, trade);
  }

  @Test
  void of_two_equal_wishes_the_greater_is_taken() {
    Fired small = wish("small", Priority.ASKED, "4x6");
    Fired large = wish("large", Priority.ASKED, "8x8");

    is("8x8", "large", 0, small, large);
    is("8x8", "large", 0, large, small);
  }

  @Test
  void of_several_rejections_of_an_option_the_hardest_is_told() {
    Resolution.Answered answered =
        answered(
            resolve(
                0,
                KEPT,
                reject("a", "4x4", 1.2),
                reject("b", "4x4", 1.7),
                reject("c", "4x4", 1.4)));

    assertThat(SampleFindings.rules(answered.rejected())).containsExactly("b");
    assertThat(answered.reasons().get(0).note().id()).isEqualTo("b");
  }

  @Test
  void rejections_are_told_in_the_order_of_the_sizes_and_wishes_behind_the_governing_reason() {
    Fired trade = wish("trade", Priority.TRADE, "4x6");
    Resolution.Answered answered =
        answered(resolve(0, KEPT, reject("b", "4x6", 1.1), trade, reject("a", "4x4", 1.2)));

    assertThat(SampleFindings.rules(answered.rejected())).containsExactly("a", "b");
    assertThat(answered.rejected()).extracting(Reason::governing).containsOnly(false);
    assertThat(SampleFindings.rules(answered.reasons())).containsExactly("b", "kept", "trade");
    assertThat(answered.reasons())
        .extracting(Reason::governing)
        .containsExactly(true, false, false);
    assertThat(answered.reasons().get(0).because()).containsExactly("what b read");
  }

  @Test
  void where_every_option_is_rejected_the_one_that_came_closest_is_told() {
    Resolution resolution =
        resolve(
            0,
            KEPT,
            reject("a", "4x4", 2.0),
            reject("b", "4x6", 1.6),
            reject("b2", "6x6", 1.1),
            reject("c", "6x6", 1.2),
            reject("d", "8x8", 1.3));

    assertThat(resolution).isInstanceOf(Resolution.Unanswerable.class);
    Resolution.Unanswerable none = (Resolution.Unanswerable) resolution;
    assertThat(none.question()).hasValue(POST_SIZE);
    assertThat(none.closest().note().id()).isEqualTo("c");
    assertThat(none.closest().governing()).isTrue();
    assertThat(SampleFindings.rules(none.rejected())).containsExactly("a", "b", "c", "d");
  }

  @Test
  void a_size_does_not_shrink_below_that_of_the_run_before() {
    assertThat(option(resolve(2, KEPT))).isEqualTo("6x6");
    assertThat(option(resolve(2, KEPT, reject("a", "6x6", 1.1)))).isEqualTo("8x8");
    assertThat(resolve(2, KEPT, reject("a", "6x6", 1.1), reject("b", "8x8", 1.2)))
        .isInstanceOf(Resolution.Unanswerable.class);
  }

  @Test
  void what_stopped_a_size_in_the_run_before_stays_the_reason() {
    List<Reason> earlier =
        answered(resolve(0, KEPT, reject("was", "4x4", 1.4), reject("too", "4x6", 1.2))).rejected();

    Resolution.Answered answered =
        answered(new OptionResolver(POST_SIZE, SIZES, List.of(KEPT), 2).keeping(earlier).resolve());

    assertThat(answered.answer().option()).isEqualTo("6x6");
    assertThat(SampleFindings.rules(answered.reasons())).containsExactly("too", "kept");
    assertThat(answered.reasons().get(0).governing()).isTrue();
    assertThat(SampleFindings.rules(answered.rejected())).containsExactly("was", "too");
  }

  @Test
  void a_check_that_stopped_a_size_among_its_own_kind_is_told_before_what_stops_it_now() {
    assertThat(toldOf("4x4", SampleFindings.fails(POST_SIZE, "was", "4x4", 1.4))).isEqualTo("was");
  }

  @Test
  void a_stop_of_look_is_told_among_the_timbers_that_lie_there_now() {
    assertThat(toldOf("4x4", reject("was", "4x4", 1.4))).isEqualTo("now");
  }

  /**
   * What is kept between runs hands out the same finding again where a rule finds it anew: then it
   * is told of now, as it is where every finding is a new one.
   */
  @Test
  void a_finding_is_told_of_the_run_before_only_where_it_was_kept_from_it() {
    Fired look = reject("look", "4x4", 1.4);
    Fired check = SampleFindings.fails(POST_SIZE, "check", "4x4", 1.4);

    assertThat(tellsEarlier(look, 1, look)).isFalse();
    assertThat(tellsEarlier(check, 0, check)).isFalse();
    assertThat(tellsEarlier(check, 1, check)).isTrue();
    assertThat(tellsEarlier(look, 1)).isTrue();
  }

  /** Whether what governs is told of the run before, where that stopped a size then. */
  private static boolean tellsEarlier(Fired before, int floor, Fired... now) {
    List<Fired> found = new ArrayList<>(List.of(now));
    found.add(SampleFindings.reject(POST_SIZE, "not sold", "8x8", 1.1));
    OptionResolver resolver =
        new OptionResolver(POST_SIZE, SIZES, found, floor)
            .keeping(answered(resolve(0, KEPT, before)).rejected());
    return resolver.tellsEarlier(answered(resolver.resolve()).reasons().get(0));
  }

  /** The rule that is told to have stopped a size, where another stops it now. */
  private static String toldOf(String size, Fired before) {
    List<Reason> earlier = answered(resolve(0, KEPT, before)).rejected();
    Resolution.Answered answered =
        answered(
            new OptionResolver(POST_SIZE, SIZES, List.of(KEPT, reject("now", size, 1.1)), 1)
                .keeping(earlier)
                .resolve());
    return SampleFindings.rules(answered.rejected()).get(0);
  }

  @Test
  void a_wish_for_what_is_not_sold_is_no_reason_for_what_is() {
    Fired gone = wish("kept", Priority.KEPT, "5x5");
    Fired trade = wish("trade", Priority.TRADE, "6x6");

    is("6x6", "trade", 0, gone, trade);
    is("4x6", "tall", 0, gone, reject("tall", "4x4", 1.2));
  }

  @Test
  void an_answer_that_no_rule_speaks_for_is_a_fault_of_the_rules() {
    assertThatThrownBy(() -> resolve(0, wish("kept", Priority.KEPT, "5x5")))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage("no rule speaks for 4x4 as the answer to post.size");
  }

  @Test
  void a_question_without_a_finding_or_without_options_is_a_fault_of_the_rules() {
    assertThatThrownBy(() -> resolve(0))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage("no rule has anything to say about post.size");
    assertThatThrownBy(() -> new OptionResolver(POST_SIZE, List.of(), List.of(KEPT), 0).resolve())
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage("question post.size has no options at all");
  }

  private static Fired wish(String rule, Priority priority, String option) {
    return SampleFindings.prefer(POST_SIZE, rule, priority, option);
  }

  private static Fired reject(String rule, String option, double ratio) {
    return SampleFindings.reject(POST_SIZE, rule, option, ratio);
  }

  private static void is(String option, String governing, int floor, Fired... findings) {
    Resolution resolution = resolve(floor, findings);

    assertThat(option(resolution)).isEqualTo(option);
    Reason first = answered(resolution).reasons().get(0);
    assertThat(first.note().id()).isEqualTo(governing);
  }

  private static Resolution resolve(int floor, Fired... findings) {
    return new OptionResolver(POST_SIZE, SIZES, List.of(findings), floor).resolve();
  }

  private static String option(Resolution resolution) {
    return answered(resolution).answer().option();
  }

  private static Resolution.Answered answered(Resolution resolution) {
    return (Resolution.Answered) resolution;
  }
}
