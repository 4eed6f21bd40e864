package org.scantling.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Choice;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reach;
import org.scantling.reasons.Reason;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.reasons.Stretch;
import org.scantling.reasons.Threshold;
import org.scantling.tables.DemandRow;

/** The search alone, over answers made up for it: today is 50, searched 0 to 100, sampled by 10. */
class DemandSweepTest {
  private static final Set<Question> POSTS = Set.of(Question.POST_SIZE);
  private static final DemandScale HUNDRED = numbers(50, Unit.INCH, 0, 100, 10, Optional.empty());

  private final Set<Integer> tried = new TreeSet<>();

  @Test
  void the_last_value_with_todays_choice_and_the_first_without_it_are_neighbours() {
    Reach reach = search(inches -> inches <= 63 ? "4x4" : "6x6", POSTS);

    assertThat(reach.points())
        .extracting(Threshold::up, point -> amount(point.at()), point -> amount(point.beyond()))
        .containsExactly(tuple(true, 63.0, 64.0));
    assertThat(size(reach.points().get(0).here())).isEqualTo("4x4");
    assertThat(size(reach.points().get(0).there())).isEqualTo("6x6");
    assertThat(tried).contains(63, 64);
  }

  @Test
  void both_ways_are_searched_and_the_nearest_turn_counts() {
    Reach reach = search(inches -> inches < 12 ? "2x4" : inches < 41 ? "4x4" : "6x6", POSTS);

    assertThat(reach.points())
        .extracting(Threshold::up, point -> amount(point.at()), point -> size(point.there()))
        .containsExactly(tuple(false, 41.0, "4x4"));
  }

  @Test
  void a_turn_right_beside_today_is_found() {
    Reach reach = search(inches -> inches <= 50 ? "4x4" : "6x6", POSTS);

    assertThat(amount(reach.points().get(0).at())).isEqualTo(50);
    assertThat(amount(reach.points().get(0).beyond())).isEqualTo(51);
  }

  @Test
  void a_choice_that_comes_back_is_told_with_all_its_stretches() {
    Reach reach = search(inches -> inches > 62 && inches < 88 ? "6x6" : "4x4", POSTS);

    assertThat(amount(reach.points().get(0).at())).isEqualTo(62);
    assertThat(reach.mixed().get(Question.POST_SIZE))
        .extracting(
            each -> amount(each.first()), each -> amount(each.last()), DemandSweepTest::size)
        .containsExactly(
            tuple(0.0, 62.0, "4x4"), tuple(63.0, 87.0, "6x6"), tuple(88.0, 100.0, "4x4"));
  }

  @Test
  void a_choice_that_only_grows_is_not_mixed() {
    assertThat(search(inches -> inches <= 63 ? "4x4" : "6x6", POSTS).mixed()).isEmpty();
  }

  @Test
  void what_one_question_made_it_try_corrects_another() {
    // The posts turn for one inch only, between two samples; the headers make the search look
    // there.
    IntFunction<Proposal> engine =
        inches ->
            proposed(
                decision(Question.POST_SIZE, inches == 65 ? "6x6" : "4x4"),
                decision(Question.HEADER_SIZE, inches < 65 ? "4x4" : "4x6"));

    Reach alone = sweep(engine).search(POSTS);
    Reach both = sweep(engine).search(Set.of(Question.POST_SIZE, Question.HEADER_SIZE));

    assertThat(alone.points()).isEmpty();
    assertThat(both.points())
        .filteredOn(point -> point.question() == Question.POST_SIZE)
        .extracting(point -> amount(point.at()))
        .containsExactly(64.0);
  }

  @Test
  void where_a_structure_ends_is_told_with_what_ends_it() {
    Reach reach =
        sweep(inches -> inches > 70 ? refused() : proposed(decision(Question.POST_SIZE, "4x4")))
            .search(POSTS);

    assertThat(reach.ends())
        .extracting(Reach.End::up, end -> amount(end.at()), end -> amount(end.beyond()))
        .containsExactly(tuple(true, 70.0, 71.0));
    assertThat(reach.ends().get(0).refused().demand()).isEqualTo("site.climate.ground-snow");
    assertThat(reach.points().get(0).there().refused()).isTrue();
  }

  @Test
  void a_site_without_a_structure_is_told_where_one_begins() {
    Reach reach =
        sweep(inches -> inches > 44 ? refused() : proposed(decision(Question.POST_SIZE, "4x4")))
            .search(POSTS);

    assertThat(reach.points()).isEmpty();
    assertThat(reach.ends())
        .extracting(Reach.End::up, end -> amount(end.at()), end -> amount(end.beyond()))
        .containsExactly(tuple(false, 45.0, 44.0));
  }

  @Test
  void a_thing_that_is_no_longer_needed_is_another_choice() {
    Reach reach =
        sweep(inches -> inches > 58 ? proposed() : proposed(decision(Question.POST_SIZE, "4x4")))
            .search(POSTS);

    assertThat(reach.points().get(0).there()).isInstanceOf(Choice.Needless.class);
    assertThat(amount(reach.points().get(0).at())).isEqualTo(58);
  }

  @Test
  void of_words_each_that_leads_elsewhere_is_told() {
    List<String> words = List.of("none", "clematis", "grape", "wisteria");
    Reach reach =
        new DemandSweep(
                Demand.VINE,
                new DemandScale.Words(words, 1),
                place -> proposed(decision(Question.POST_SIZE, place % 2 == 0 ? "6x6" : "4x4")))
            .search(POSTS);

    assertThat(reach.points())
        .extracting(Threshold::at, Threshold::beyond, Threshold::up)
        .containsExactly(
            tuple(new Outcome.Word("clematis"), new Outcome.Word("none"), false),
            tuple(new Outcome.Word("clematis"), new Outcome.Word("grape"), true));
  }

  @Test
  void no_value_is_tried_twice() {
    List<Integer> asked = new ArrayList<>();
    new DemandSweep(
            Demand.CLEAR_WIDTH,
            HUNDRED,
            place -> {
              asked.add(place);
              return proposed(decision(Question.POST_SIZE, place <= 13 ? "4x4" : "6x6"));
            })
        .search(POSTS);

    assertThat(asked).doesNotHaveDuplicates().hasSizeLessThan(18);
  }

  @Test
  void values_are_counted_from_todays_and_kept_within_the_row_and_the_reach() {
    DemandScale scale = numbers(84.5, Unit.INCH, 78, 144, 8, Optional.of(20.0));

    assertThat(amount(scale.value(scale.least()))).isEqualTo(78.5);
    assertThat(amount(scale.value(scale.most()))).isEqualTo(104.5);
    assertThat(scale.samples()).containsExactly(-6, 0, 8, 16, 20);
  }

  @Test
  void a_site_beyond_the_row_is_searched_from_where_it_is() {
    DemandScale scale = numbers(95, Unit.PSF, 0, 80, 8, Optional.empty());

    assertThat(amount(scale.value(scale.most()))).isEqualTo(95);
    assertThat(amount(scale.value(scale.least()))).isEqualTo(0);
  }

  private Reach search(IntFunction<String> sizeAt, Set<Question> questions) {
    return sweep(inches -> proposed(decision(Question.POST_SIZE, sizeAt.apply(inches))))
        .search(questions);
  }

  private DemandSweep sweep(IntFunction<Proposal> engine) {
    return new DemandSweep(
        Demand.CLEAR_WIDTH,
        HUNDRED,
        place -> {
          int inches = place + 50;
          tried.add(inches);
          return engine.apply(inches);
        });
  }

  private static DemandScale numbers(
      double now, Unit unit, double least, double most, double apart, Optional<Double> reach) {
    return new DemandScale.Numbers(
        new Measure(now, unit),
        new DemandRow.Scale(
            new Measure(1, unit),
            new Measure(least, unit),
            new Measure(most, unit),
            new Measure(apart, unit),
            reach.map(each -> new Measure(each, unit))));
  }

  private static double amount(Outcome outcome) {
    return ((Outcome.Amount) outcome).measure().amount();
  }

  private static String size(Stretch stretch) {
    return size(stretch.choice());
  }

  private static String size(Choice choice) {
    return ((Outcome.Word) ((Choice.Made) choice).decision().proposed()).text();
  }

  private static Proposal proposed(Decision... decisions) {
    return proposal(new Proposal.Result.Proposed(null), List.of(decisions));
  }

  private static Proposal refused() {
    return proposal(
        new Proposal.Result.NeedsEngineer(
            "site.climate.ground-snow", Optional.empty(), reason(), Optional.empty()),
        List.of());
  }

  private static Proposal proposal(Proposal.Result result, List<Decision> decisions) {
    return new Proposal(
        "site",
        "base",
        result,
        decisions,
        List.of(),
        List.of(),
        List.of(),
        CheckLimits.plain(),
        List.of(),
        List.of());
  }

  private static Decision decision(Question question, String size) {
    return new Decision(
        question,
        Optional.empty(),
        new Outcome.Word(size),
        false,
        List.of(reason()),
        List.of(),
        List.of());
  }

  private static Reason reason() {
    Source source = new Source(SourceKind.CALCULATION, "geometry", false);
    return new Reason(
        new Finding.Refuse("site.climate.ground-snow", 1, Evidence.none()),
        new RuleNote("tiny.rule", Phase.CLIMATE, "snow/too much", source),
        true,
        List.of());
  }
}
