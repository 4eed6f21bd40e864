package org.scantling.options;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.property.House;
import org.scantling.property.Wish;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Change;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.WholeOption;
import org.scantling.tables.OptionCountRow;

/** Which structure beats which, and which of them are shown for what. */
class RivalsTest {
  private static final List<OptionCountRow> ROWS =
      House.TABLES.optionCounts().rows().stream()
          .filter(row -> row.measure() != OptionMeasure.COST)
          .toList();

  private static final Rivals RIVALS = new Rivals(ROWS);
  private static final Proposal ANY = House.propose(Wish.plain(), House.roseGate());

  private static final Trial PLAIN = trial(0, 40, 8, 80, 0.9, 0.9);

  /** Timber, posts, hours, look and hardest check; the bays tell them apart. */
  private static Trial trial(
      int bays, double timber, double holes, double hours, double look, double spare) {
    Map<OptionMeasure, Double> measures = new EnumMap<>(OptionMeasure.class);
    measures.put(OptionMeasure.TIMBER, timber);
    measures.put(OptionMeasure.HOLES, holes);
    measures.put(OptionMeasure.HOURS, hours);
    measures.put(OptionMeasure.LOOK, look);
    measures.put(OptionMeasure.SPARE, spare);
    return new Trial(
        bays == 0 ? Attempt.NOTHING : bays(bays), proposal(bays), measures, 1, Optional.empty());
  }

  /** Answers of its own, so that no two are the same structure. */
  private static Proposal proposal(int bays) {
    Outcome count = new Outcome.Amount(Measure.count(bays));
    return answering(Question.BAYS, count, count);
  }

  private static Proposal answering(Question question, Outcome answer, Outcome width) {
    return new Proposal(
        "by hand",
        "by hand",
        ANY.result(),
        List.of(decision(question, answer), decision(Question.CLEAR_WIDTH, width)),
        List.of(),
        List.of(),
        List.of(),
        ANY.checkLimits(),
        List.of(),
        List.of());
  }

  private static Decision decision(Question question, Outcome answer) {
    return new Decision(
        question,
        Optional.empty(),
        answer,
        false,
        List.of(ANY.decisions().get(0).governing()),
        List.of(),
        List.of());
  }

  private static Attempt bays(int bays) {
    Outcome then = new Outcome.Amount(Measure.count(bays));
    return Attempt.of(new Change(Demand.BAYS, "walkway.bays", then, then, 0, true), false);
  }

  @Test
  void one_beats_another_that_is_worse_at_something_and_better_at_nothing() {
    assertThat(RIVALS.beats(trial(1, 30, 8, 80, 0.9, 0.9), PLAIN)).isTrue();
    assertThat(RIVALS.beats(trial(1, 30, 8, 81, 0.9, 0.9), PLAIN)).isFalse();
    assertThat(RIVALS.beats(PLAIN, PLAIN)).isFalse();
  }

  @Test
  void more_of_the_look_is_better_and_less_of_anything_else() {
    assertThat(RIVALS.beats(trial(1, 40, 8, 80, 0.95, 0.9), PLAIN)).isTrue();
    assertThat(RIVALS.beats(trial(1, 40, 8, 80, 0.9, 0.85), PLAIN)).isTrue();
    assertThat(RIVALS.beats(trial(1, 40, 8, 80, 0.85, 0.9), PLAIN)).isFalse();
  }

  @Test
  void what_differs_by_less_than_a_step_is_alike() {
    assertThat(RIVALS.beats(trial(1, 39.9, 8, 80, 0.9, 0.9), PLAIN)).isFalse();
    assertThat(RIVALS.beats(trial(1, 39.5, 8, 80, 0.9, 0.9), PLAIN)).isTrue();
  }

  @Test
  void each_is_shown_for_what_none_other_is_better_at_and_the_proposed_one_first() {
    List<WholeOption> shown =
        showing(trial(3, 50, 4, 90, 0.7, 0.9), PLAIN, trial(1, 30, 8, 90, 0.8, 0.9));

    assertThat(shown).extracting(WholeOption::asProposed).containsExactly(true, false, false);
    assertThat(shown.get(0).bestAt()).contains(OptionMeasure.HOURS, OptionMeasure.LOOK);
    assertThat(shown.get(1).settings()).containsExactly("walkway.bays=1");
    assertThat(shown.get(1).bestAt()).startsWith(OptionMeasure.TIMBER);
    assertThat(shown.get(2).bestAt()).startsWith(OptionMeasure.HOLES);
  }

  @Test
  void what_is_better_by_a_trifle_is_not_worth_showing() {
    assertThat(showing(PLAIN, trial(1, 37, 8, 85, 0.9, 0.9))).hasSize(1);
    assertThat(showing(PLAIN, trial(1, 35, 8, 85, 0.9, 0.9))).hasSize(2);
  }

  @Test
  void what_beats_the_proposed_one_is_always_shown() {
    Trial better = trial(2, 39, 8, 79, 0.9, 0.9);

    assertThat(showing(PLAIN, better))
        .extracting(WholeOption::settings)
        .containsExactly(List.of(), List.of("walkway.bays=2"));
  }

  @Test
  void no_more_than_six_are_shown() {
    assertThat(
            showing(
                PLAIN,
                trial(1, 20, 8, 90, 0.8, 0.9),
                trial(2, 50, 2, 90, 0.7, 0.9),
                trial(3, 50, 8, 40, 0.7, 0.9),
                trial(4, 50, 8, 90, 1, 0.9),
                trial(5, 60, 8, 90, 0.6, 0.2),
                trial(6, 20, 2, 95, 0.5, 0.9)))
        .hasSizeLessThanOrEqualTo(6);
  }

  /** An inch is asked for where an inch does, though three would bring the same timber. */
  @Test
  void no_more_room_is_given_up_than_brings_the_smaller_timber() {
    assertThat(showing(PLAIN, narrower(57), narrower(58), narrower(59)))
        .extracting(WholeOption::settings)
        .containsExactly(List.of(), List.of("walkway.clear-width=59 in"));
  }

  /** Five feet less some inches: less timber, in other sizes than those of the plain one. */
  private static Trial narrower(double widthIn) {
    Outcome from = new Outcome.Amount(Measure.inches(60));
    Outcome to = new Outcome.Amount(Measure.inches(widthIn));
    Attempt attempt =
        Attempt.of(new Change(Demand.CLEAR_WIDTH, "walkway.clear-width", from, to, 0, true), true);
    Map<OptionMeasure, Double> measures = new EnumMap<>(PLAIN.measures());
    measures.put(OptionMeasure.TIMBER, 30.0);
    measures.put(OptionMeasure.CONCEDED, attempt.concededIn());
    return new Trial(
        attempt,
        answering(Question.POST_SIZE, new Outcome.Word("4x4"), to),
        measures,
        1,
        Optional.empty());
  }

  private static List<WholeOption> showing(Trial... trials) {
    return new Showing(House.TABLES, ROWS, RIVALS).of(List.of(trials)).options();
  }
}
