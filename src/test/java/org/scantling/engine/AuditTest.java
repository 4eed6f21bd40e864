package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Shortfall;
import org.scantling.reasons.Shortfall.Kind;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.rulebase.Fired;
import org.scantling.tables.Tables;

class AuditTest {
  private static final Tables TABLES = Tables.load();

  @Test
  void a_number_on_its_bound_stands_and_one_past_it_does_not() {
    List<Fired> bounds =
        List.of(
            SampleFindings.atLeast(Question.FOOTING_DEPTH, "least", 30),
            SampleFindings.atMost(Question.FOOTING_DEPTH, "most", 96));
    assertThat(audit(Answer.number(Question.FOOTING_DEPTH, 30), bounds)).isEmpty();
    assertThat(audit(Answer.number(Question.FOOTING_DEPTH, 96), bounds)).isEmpty();
    assertThat(audit(Answer.number(Question.FOOTING_DEPTH, 29), bounds))
        .singleElement()
        .satisfies(
            shallow -> {
              assertThat(shallow.reason().note().id()).isEqualTo("least");
              assertThat(shallow.ratio()).hasValue(30.0 / 29);
            });
    assertThat(audit(Answer.number(Question.FOOTING_DEPTH, 97), bounds))
        .extracting(each -> each.reason().note().id())
        .containsExactly("most");
  }

  @Test
  void a_bound_of_nothing_gives_no_ratio() {
    assertThat(
            audit(
                Answer.number(Question.HEADER_NOTCH, 0.5),
                List.of(SampleFindings.atMost(Question.HEADER_NOTCH, "most", 0))))
        .singleElement()
        .satisfies(each -> assertThat(each.ratio()).isEmpty());
  }

  @Test
  void only_the_option_that_is_built_is_found_fault_with() {
    List<Fired> rejects =
        List.of(
            SampleFindings.reject(Question.POST_SIZE, "thin", "4x4", 1.2),
            SampleFindings.reject(Question.POST_SIZE, "stout", "8x8", 1.5));
    assertThat(audit(Answer.option(Question.POST_SIZE, "6x6"), rejects)).isEmpty();
    assertThat(audit(Answer.option(Question.POST_SIZE, "4x4"), rejects))
        .singleElement()
        .satisfies(each -> assertThat(each.ratio()).hasValue(1.2));
  }

  @Test
  void a_rejection_by_a_check_is_told_by_the_check_itself() {
    Finding finding =
        new Finding.Reject(Question.POST_SIZE, "4x4", "post.drift", 2, Evidence.none());
    Fired fired =
        new Fired(finding, note(SourceKind.STANDARD), List.of("post.drift", "post.size=4x4"));
    assertThat(audit(Answer.option(Question.POST_SIZE, "4x4"), List.of(fired))).isEmpty();
  }

  @Test
  void common_practice_is_a_habit_but_never_where_somebody_has_to_pass() {
    assertThat(kind(Question.POST_HEIGHT, SourceKind.COMMON_PRACTICE)).isEqualTo(Kind.OUT_OF_HABIT);
    assertThat(kind(Question.POST_HEIGHT, SourceKind.STANDARD)).isEqualTo(Kind.DOES_NOT_MEET);
    assertThat(kind(Question.POST_HEIGHT, SourceKind.CALCULATION)).isEqualTo(Kind.DOES_NOT_MEET);
    assertThat(kind(Question.CLEAR_WIDTH, SourceKind.COMMON_PRACTICE))
        .isEqualTo(Kind.DOES_NOT_MEET);
  }

  @Test
  void what_was_asked_is_held_to_both_ways_but_more_room_to_pass_is_welcome() {
    assertThat(asked(Question.BAY, 90, 45)).isEqualTo(List.of(Kind.NOT_AS_ASKED));
    assertThat(asked(Question.BAY, 45, 90)).isEqualTo(List.of(Kind.NOT_AS_ASKED));
    assertThat(asked(Question.BAY, 90, 90)).isEmpty();
    assertThat(asked(Question.CLEAR_WIDTH, 72, 60)).isEqualTo(List.of(Kind.NOT_AS_ASKED));
    assertThat(asked(Question.CLEAR_WIDTH, 72, 80)).isEmpty();
  }

  @Test
  void a_style_that_was_asked_for_is_missed_and_one_the_trade_prefers_is_not() {
    Answer onTop = Answer.option(Question.HEADER_STYLE, "on-top");
    assertThat(
            audit(
                onTop,
                List.of(
                    SampleFindings.prefer(
                        Question.HEADER_STYLE, "asked", Priority.ASKED, "paired"))))
        .extracting(Shortfall::kind)
        .containsExactly(Kind.NOT_AS_ASKED);
    assertThat(
            audit(
                onTop,
                List.of(
                    SampleFindings.prefer(
                        Question.HEADER_STYLE, "trade", Priority.TRADE, "paired"))))
        .isEmpty();
  }

  @Test
  void a_count_that_does_not_divide_evenly_was_taken_otherwise() {
    Finding laidOut = Finding.prefer(Question.CROSSBEAM_COUNT, 7, Evidence.none());
    Fired fired = new Fired(laidOut, note(SourceKind.CALCULATION), List.of("crossbeam.count"));
    assertThat(audit(Answer.number(Question.CROSSBEAM_COUNT, 8), List.of(fired)))
        .extracting(Shortfall::kind)
        .containsExactly(Kind.TAKEN_OTHERWISE);
    assertThat(Kind.TAKEN_OTHERWISE.fails()).isFalse();
  }

  private static List<Kind> asked(Question question, double wished, double built) {
    return audit(
            Answer.number(question, built),
            List.of(SampleFindings.prefer(question, "asked", Priority.ASKED, wished)))
        .stream()
        .map(Shortfall::kind)
        .toList();
  }

  private static Kind kind(Question question, SourceKind source) {
    Fired fired =
        new Fired(Finding.atLeast(question, 10, Evidence.none()), note(source), List.of());
    return audit(Answer.number(question, 9), List.of(fired)).get(0).kind();
  }

  private static RuleNote note(SourceKind kind) {
    return new RuleNote("a.rule", Phase.POSTS, "a/rule", new Source(kind, "somewhere", false));
  }

  private static List<Shortfall> audit(Answer answer, List<Fired> findings) {
    return new Audit(TABLES, answer).of(findings);
  }
}
