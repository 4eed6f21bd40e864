package org.scantling.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;
import org.scantling.tables.Tables;

class VoiceTest {
  private static final Words WORDS = Words.load(Tables.load());
  private final Voice client = WORDS.voice(Reader.CLIENT, UnitSystem.IMPERIAL);
  private final Voice builder = WORDS.voice(Reader.BUILDER, UnitSystem.IMPERIAL);
  private final Voice engineer = WORDS.voice(Reader.ENGINEER, UnitSystem.IMPERIAL);

  @ParameterizedTest
  @CsvSource({
    "84,7 ft",
    "84.5,7 ft 1/2 in",
    "5.5,5 1/2 in",
    "0.4,about 1/2 in",
    "98.3,about 8 ft 2 1/2 in",
    "12.75,about 1 ft 1 in"
  })
  void lengths_for_the_client_are_what_the_eye_can_tell_and_say_so_where_they_are_not_all(
      double inches, String said) {
    assertThat(client.say(Measure.inches(inches))).isEqualTo(said);
  }

  @Test
  void a_pressure_is_the_water_that_weighs_as_much() {
    // 62.4 lb a cubic foot: 26 psf is five inches of water
    assertThat(client.say(Measure.psf(26))).isEqualTo("as heavy as water standing 5 in deep");
    assertThat(WORDS.voice(Reader.CLIENT, UnitSystem.METRIC).say(Measure.psf(26)))
        .isEqualTo("as heavy as water standing 13 cm deep");
  }

  @Test
  void metric_clients_get_centimetres_and_metres() {
    Voice metric = WORDS.voice(Reader.CLIENT, UnitSystem.METRIC);
    assertThat(metric.say(Measure.inches(20))).isEqualTo("about 51 cm");
    assertThat(metric.say(Measure.inches(98.5))).isEqualTo("about 2.5 m");
    assertThat(metric.say(Measure.inches(20 / 2.54))).isEqualTo("20 cm");
  }

  @Test
  void a_share_is_percent_and_a_slenderness_is_not() {
    assertThat(builder.say(Measure.ratio(0.856))).isEqualTo("86 %");
    assertThat(builder.say(Measure.ratio(51.9))).isEqualTo("51.9");
    assertThat(engineer.say(Measure.ratio(0.856))).isEqualTo("0.86");
    assertThat(client.say(Measure.ratio(0.53))).isEqualTo("55 %");
  }

  @Test
  void the_engineer_sees_decimals_where_no_tape_shows_the_length() {
    assertThat(engineer.say(Measure.inches(98.5))).isEqualTo("8'-2 1/2\"");
    assertThat(engineer.say(Measure.inches(0.0412))).isEqualTo("0.041 in");
    assertThat(WORDS.voice(Reader.ENGINEER, UnitSystem.METRIC).say(Measure.inches(0.0412)))
        .isEqualTo("1.0 mm");
  }

  @Test
  void the_builder_reads_trade_fractions() {
    assertThat(builder.say(Measure.inches(68.5))).isEqualTo("5'-8 1/2\"");
    assertThat(builder.say(new Measure(25, Unit.PSF))).isEqualTo("25 psf");
    assertThat(builder.say(Question.HEADER_NOTCH, new Outcome.Amount(Measure.inches(0))))
        .isEqualTo("none");
  }

  /** 0.183 and 0.188 in are both nearest to 12 of 64 parts of an inch. */
  @Test
  void two_amounts_that_read_the_same_are_not_set_against_each_other() {
    assertThat(stopped(0.188, 0.183))
        .isEqualTo(
            "2x12 would not pass this check: sideways bow, wind on its face, 3 % over, under own"
                + " weight and wind.");
    assertThat(stopped(0.25, 0.125)).contains("on its face (1/4\" where 1/8\" is allowed), ");
  }

  private String stopped(double demandIn, double capacityIn) {
    Evidence evidence =
        Evidence.saw("demand", Measure.inches(demandIn))
            .and("capacity", Measure.inches(capacityIn))
            .and("combination", "D+0.6W");
    String rule = "crossbeams.size.check";
    Finding stop =
        new Finding.Reject(
            Question.CROSSBEAM_SIZE,
            "2x12",
            "crossbeam.lateral-sag",
            demandIn / capacityIn,
            evidence);
    Source source = new Source(SourceKind.COMMON_PRACTICE, "no source", false);
    RuleNote note = new RuleNote(rule, Phase.CROSSBEAMS, "a/rule", source);
    return builder.sentence(new Reason(stop, note, false, List.of()));
  }

  @Test
  void a_nominal_size_is_told_with_what_it_measures() {
    assertThat(AnswerWords.of(builder).detailed(Question.HEADER_SIZE, new Outcome.Word("2-2x8")))
        .isEqualTo("a pair of 2x8 (1 1/2\" by 7 1/4\")");
    assertThat(AnswerWords.of(client).described(Question.POST_SIZE, new Outcome.Word("6x6")))
        .isEqualTo("posts of 6x6 (5 1/2 in square)");
    assertThat(AnswerWords.of(client).detailed(Question.HEADER_SIZE, new Outcome.Word("2-2x8")))
        .isEqualTo("a pair of 2x8 (1 1/2 in by 7 1/4 in)");
    assertThat(
            AnswerWords.of(WORDS.voice(Reader.CLIENT, UnitSystem.METRIC))
                .detailed(Question.CROSSBEAM_SIZE, new Outcome.Word("45x95")))
        .isEqualTo("45x95 (45 mm by 95 mm)");
  }

  @Test
  void options_are_words_and_unlisted_ones_lose_their_hyphens() {
    assertThat(client.option(Question.EXPOSURE, "C")).isEqualTo("open country");
    assertThat(builder.option(Question.EXPOSURE, "C")).isEqualTo("open country (C)");
    assertThat(client.option(Question.VINE, "climbing-rose")).isEqualTo("climbing rose");
  }

  @ParameterizedTest
  @CsvSource({
    "1.02,a shade past the safe limit",
    "1.09,about a tenth past the safe limit",
    "1.18,about a fifth past the safe limit",
    "1.26,about a quarter past the safe limit",
    "1.34,about a third past the safe limit",
    "1.5,about half past the safe limit",
    "1.67,about two thirds past the safe limit",
    "1.76,about three quarters past the safe limit",
    "1.9,nearly twice the safe limit",
    "2.1,about twice the safe limit",
    "2.6,about 3 times the safe limit",
    "5.4,about 5 times the safe limit"
  })
  void how_far_over_is_told_to_the_client_without_a_false_digit(double ratio, String said) {
    assertThat(client.over(ratio)).isEqualTo(said);
  }

  @Test
  void the_limit_is_called_after_what_the_check_keeps_from_happening() {
    assertThat(client.over(1.67, builder.nature("post.drift")))
        .isEqualTo("about two thirds past what looks and feels firm");
    assertThat(client.over(1.67, builder.nature("post.bending"))).endsWith(" the safe limit");
    assertThat(client.over(1.67, builder.nature("post.slender-look")))
        .endsWith(" what the rule book allows");
    assertThat(builder.over(1.67, builder.nature("post.drift"))).isEqualTo("67 % over");
  }

  @Test
  void a_fixed_text_has_its_inches_in_millimetres_for_metric_readers() {
    Voice metric = WORDS.voice(Reader.BUILDER, UnitSystem.METRIC);
    assertThat(metric.metric("two 3/8 x 8 in lag screws, two 3 in screws each end"))
        .isEqualTo("two 9.5 x 203 mm lag screws, two 76 mm screws each end");
    assertThat(metric.metric("5 1/2 in broad, 1200 lb of lift, in 2 rows"))
        .isEqualTo("140 mm broad, 5.4 kN of lift, in 2 rows");
    assertThat(metric.option(Question.HEADER_JOINT, "header-paired"))
        .isEqualTo("two 12.7 mm bolts through the post");
    assertThat(builder.metric("two 1/2 in bolts")).isEqualTo("two 1/2 in bolts");
  }

  @Test
  void how_far_over_is_told_to_the_others_by_number() {
    assertThat(builder.over(1.57)).isEqualTo("57 % over");
    assertThat(builder.over(1.001)).isEqualTo("just over");
    assertThat(builder.over(2.35)).isEqualTo("2.4 times what is allowed");
    assertThat(builder.over(5.38)).isEqualTo("5.4 times what is allowed");
    assertThat(engineer.over(1.57)).isEqualTo("ratio 1.57");
  }

  @Test
  void what_is_past_telling_in_numbers_says_so_instead() {
    // NDS 3.9.2: with fc at FcE the sum has no number; a ratio of 1000 stands for it.
    assertThat(builder.over(1000))
        .isEqualTo(
            "so far that it leans over under its load: it does not stand up without more bracing");
    assertThat(builder.over(12.4)).isEqualTo("more than ten times what is allowed");
    assertThat(client.over(1000)).startsWith("many times ");
    assertThat(engineer.over(1000)).isEqualTo("leans over, fc >= FcE");
    assertThat(engineer.over(12.4)).isEqualTo("ratio over 10");
  }

  @Test
  void loads_that_act_together_are_named() {
    assertThat(builder.combination("D+0.75(0.6W)+0.75S")).isEqualTo("own weight, wind and snow");
    assertThat(builder.combination("D")).isEqualTo("own weight alone");
    assertThat(engineer.combination("D+Lr")).isEqualTo("D+Lr");
  }

  @Test
  void a_source_says_what_stands_behind_it() {
    assertThat(
            builder.source(
                new Source(SourceKind.COMMON_PRACTICE, "common practice, no source", false)))
        .isEqualTo("common practice");
    assertThat(
            builder.source(new Source(SourceKind.COMMON_PRACTICE, "common practice, none", true)))
        .isEqualTo("common practice");
    assertThat(builder.source(new Source(SourceKind.STANDARD, "NDS 2018, 3.3", true)))
        .isEqualTo("NDS 2018, 3.3, from memory");
  }

  @Test
  void references_are_told_with_their_numbers() {
    assertThat(engineer.reference("bay.stretch")).startsWith("bay.stretch = 1.10: greatest bay");
    assertThat(engineer.reference("post.drift")).startsWith("post.drift: sway");
    assertThat(engineer.reference("species")).startsWith("species by default: ");
    assertThat(engineer.reference("bay.even")).isEqualTo("bay.even");
  }

  @Test
  void a_path_is_called_by_the_question_it_answers() {
    assertThat(builder.path("walkway.clear-width")).isEqualTo("clear width");
    assertThat(builder.path("site.climate.wind-speed")).isEqualTo("wind speed");
    assertThat(builder.path("walkway.length")).isEqualTo("length");
  }
}
