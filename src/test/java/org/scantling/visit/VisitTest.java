package org.scantling.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisitTest {
  private static final Visit VISIT = Asking.visit(VisitKind.SITE);

  private static Map<String, String> least() {
    return new HashMap<>(
        Map.of(
            "title",
            "Walk",
            "length",
            "24 ft",
            "weather",
            "zone",
            "hardiness-zone",
            "5",
            "base",
            "1"));
  }

  @Test
  void a_hill_is_asked_about_only_where_the_ground_is_high() {
    assertThat(asked(least())).doesNotContain("hill-shape", "slope", "machine-width");
    Map<String, String> high = least();
    high.put("around", "high");
    high.put("hill-shape", "ridge");
    high.put("hill-height", "40 ft");
    high.put("hill-half-length", "150 ft");
    high.put("hill-place", "crest");
    assertThat(asked(high)).contains("hill-shape", "hill-height", "hill-half-length", "hill-place");
  }

  @Test
  void the_width_of_a_machine_is_asked_for_only_where_one_passes() {
    Map<String, String> told = least();
    told.put("users", "wheelbarrow, machine");
    told.put("machine-width", "46 in");

    assertThat(asked(told)).contains("machine-width");
    assertThat(VISIT.written(Asking.upTo(VISIT, "", told)))
        .containsEntry("walkway.users", "[ wheelbarrow, { machine-width: 46 in } ]");
  }

  @Test
  void a_zone_is_asked_for_where_the_office_has_not_told_everything() {
    Map<String, String> told = least();
    told.put("weather", "numbers");
    told.put("frost-depth", "42 in");
    told.put("ground-snow", "30 psf");

    assertThat(asked(told)).contains("hardiness-zone");
    told.put("wind-speed", "115 mph");
    assertThat(asked(told)).doesNotContain("hardiness-zone");
  }

  @ParameterizedTest
  @CsvSource({
    "3, clay",
    "clay, clay",
    "Cl, clay",
    "bed, bedrock",
    "sandy gravel, sandy-gravel",
    "SAND, sand",
    "foliated rock, foliated-rock",
    "loam, clay"
  })
  void a_choice_is_taken_by_its_number_its_word_or_enough_of_it(String typed, String word) {
    VisitAnswers answers = Asking.upTo(VISIT, "soil", least());

    assertThat(VISIT.answer(row(answers), typed, answers))
        .isInstanceOfSatisfying(
            VisitTurn.Taken.class,
            taken -> assertThat(taken.answers().of("soil").orElseThrow().text()).isEqualTo(word));
  }

  @ParameterizedTest
  @CsvSource({"sandy", "0", "6", "s", "custard", "'sand, clay'"})
  void what_may_be_two_of_them_or_none_is_not_guessed(String typed) {
    VisitAnswers answers = Asking.upTo(VISIT, "soil", least());

    assertThat(VISIT.answer(row(answers), typed, answers))
        .isInstanceOfSatisfying(
            VisitTurn.Refused.class,
            refused ->
                assertThat(refused.why())
                    .contains("must be one of")
                    .contains("bedrock", "sandy-gravel"));
  }

  @Test
  void what_lies_outside_the_rules_is_told_where_it_is_said() {
    VisitAnswers answers = Asking.upTo(VISIT, "soil", least());

    assertThat(VISIT.answer(row(answers), "peat", answers))
        .isInstanceOfSatisfying(
            VisitTurn.Refused.class,
            refused -> assertThat(refused.why()).contains("peat").contains("outside these rules"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "24           | 24 (no unit) must be a length with its unit, such as 6 ft",
        "24 psf       | wrong kind of unit",
        "900 ft       | must be from 2 ft to 400 ft",
        "ten feet     | must be a length",
      })
  void a_wrong_length_is_told_in_the_words_of_the_reader_of_the_file(String typed, String why) {
    VisitAnswers answers = Asking.upTo(VISIT, "length", least());

    assertThat(VISIT.answer(row(answers), typed, answers))
        .isInstanceOfSatisfying(
            VisitTurn.Refused.class, refused -> assertThat(refused.why()).contains(why));
  }

  @Test
  void a_wind_speed_is_held_against_the_kind_of_wind_that_was_told() {
    Map<String, String> told = least();
    told.put("weather", "numbers");
    VisitAnswers gust = Asking.upTo(VISIT, "wind-speed", told);
    told.put("wind-basis", "mean-hourly");
    VisitAnswers mean = Asking.upTo(VISIT, "wind-speed", told);

    assertThat(VISIT.answer(row(gust), "55 mph", gust)).isInstanceOf(VisitTurn.Refused.class);
    assertThat(VISIT.answer(row(mean), "55 mph", mean)).isInstanceOf(VisitTurn.Taken.class);
  }

  @Test
  void an_amount_is_told_back_in_the_units_it_was_given_in() {
    VisitAnswers answers = Asking.upTo(VISIT, "length", least());

    assertThat(read(answers, "24 ft 6 1/2 in")).hasValue("Read as 24'-6 1/2\".");
    assertThat(read(answers, "7.5 m")).hasValue("Read as 7.500 m.");
  }

  @Test
  void going_back_offers_what_was_said_and_forgets_nothing_else() {
    VisitAnswers answers = Asking.after(VISIT, "Walk", "Marl farm", "", "24 ft");
    VisitAnswers before = VISIT.back(answers).orElseThrow();

    assertThat(row(before).id()).isEqualTo("length");
    assertThat(before.earlier()).containsEntry("length", "24 ft");
    assertThat(before.of("place").orElseThrow().text()).isEqualTo("Marl farm");
    assertThat(VISIT.answer(row(before), "", before))
        .isInstanceOfSatisfying(
            VisitTurn.Taken.class,
            taken -> assertThat(taken.answers().given()).isEqualTo(answers.given()));
  }

  @Test
  void a_yes_takes_what_is_shown_where_it_is_no_answer_itself() {
    VisitAnswers asked = Asking.upTo(VISIT, "clear-width", least());

    assertThat(VISIT.answer(row(asked), "Yes", asked))
        .isInstanceOfSatisfying(
            VisitTurn.Taken.class,
            taken ->
                assertThat(taken.answers().given())
                    .isEqualTo(
                        ((VisitTurn.Taken) VISIT.answer(row(asked), "", asked)).answers().given()));
    VisitAnswers length = Asking.upTo(VISIT, "length", least());
    assertThat(VISIT.answer(row(length), "yes", length))
        .isInstanceOfSatisfying(
            VisitTurn.Refused.class, refused -> assertThat(refused.why()).contains("yes"));
  }

  @Test
  void there_is_nothing_before_the_first_question() {
    assertThat(VISIT.back(VisitAnswers.none())).isEmpty();
  }

  @Test
  void an_answer_to_a_question_that_fell_away_is_not_written() {
    Map<String, String> told = least();
    told.put("lie", "falls");
    told.put("slope", "3 %");
    VisitAnswers answers = Asking.upTo(VISIT, "", told);
    assertThat(VISIT.written(answers)).containsEntry("site.slope", "3 %");

    VisitAnswers level =
        answers.with("lie", new VisitAnswers.Given("level", VisitAnswers.From.TOLD));
    assertThat(VISIT.written(level)).doesNotContainKey("site.slope");
  }

  @Test
  void kept_answers_that_nothing_would_take_any_more_are_asked_for_again() {
    VisitAnswers kept =
        AnswersText.read("# x\ntitle = Walk\nlength = 24\nsoil = custard\nplace : -\nbays ~ 4\n");
    VisitAnswers good = VISIT.stillGood(kept);

    assertThat(good.given()).containsOnlyKeys("title", "place");
    assertThat(good.earlier()).containsEntry("bays", "4");
  }

  private static List<String> asked(Map<String, String> told) {
    return VISIT.asked(Asking.upTo(VISIT, "", told)).stream().map(VisitRow::id).toList();
  }

  private static VisitRow row(VisitAnswers answers) {
    return VISIT.next(answers).orElseThrow();
  }

  private static Optional<String> read(VisitAnswers answers, String typed) {
    return ((VisitTurn.Taken) VISIT.answer(row(answers), typed, answers)).read();
  }
}
