package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Question;
import org.scantling.words.Jargon;
import org.scantling.words.Reader;

class WhyTextTest {
  private static final PrintOptions PLAIN = PrintOptions.plain(UnitSystem.IMPERIAL);

  @Test
  void every_question_of_every_site_can_be_explained_to_every_reader_in_80_columns() {
    SoftAssertions all = new SoftAssertions();
    for (String site : Demo.all().keySet()) {
      for (Question question : Question.values()) {
        for (Reader reader : Reader.values()) {
          String text = why(site, question.id(), reader);
          all.assertThat(text).as(site + " " + question.id() + " " + reader).isNotBlank();
          all.assertThat(text.lines().mapToInt(String::length).max().orElse(0))
              .as(site + " " + question.id() + " " + reader)
              .isLessThanOrEqualTo(80);
        }
      }
    }
    all.assertAll();
  }

  @Test
  void nothing_told_to_the_client_needs_the_trade_to_be_understood() {
    SoftAssertions all = new SoftAssertions();
    for (String site : Demo.all().keySet()) {
      for (Question question : Question.values()) {
        all.assertThat(body(why(site, question.id(), Reader.CLIENT)))
            .as(site + " " + question.id())
            .doesNotContainPattern(Jargon.PATTERN);
      }
    }
    all.assertAll();
  }

  @Test
  void the_client_is_told_what_what_for_and_what_is_different() {
    assertThat(flat("wisteria-court", "posts", Reader.CLIENT))
        .containsSubsequence(
            "Posts of 8x8 (7 1/2 in square) here; 6x6 (5 1/2 in square) at the Hop walk.",
            "We must be sure that ",
            "With 6x6 we could not be: ",
            "What is different here: wisteria that will climb over it instead of hops",
            "a way at least 8 ft 2 in high instead of about 7 ft 9 in.",
            "Also about this",
            "How tall the posts stand: about 8 ft 11 1/2 in, instead of 8 ft 4 in.");
  }

  @Test
  void the_builder_is_told_the_rule_the_source_and_what_was_weighed() {
    assertThat(flat("everything-at-once", "footing.depth", Reader.BUILDER))
        .containsSubsequence(
            "; the base has 4'-6\".",
            " is what holds the post upright",
            "[footings.depth.embedment; ",
            "Because these are different here, largest effect first: exposure open country (C), was",
            "wind speed 120 mph, was 110 mph.",
            "Also weighed",
            "The foot must reach the frost line at 5'-0\". [footings.depth.frost; ",
            "common practice",
            "How close it is to its limits now",
            " %: depth against the sideways push, ");
  }

  @Test
  void the_builder_is_told_what_stopped_the_options_next_below() {
    assertThat(flat("everything-at-once", "layout.bays", Reader.BUILDER))
        .containsSubsequence(
            "Could not be",
            "- With 7, no post size works: ",
            "- With 6, no post size works: ",
            "- 3 would make each bay 14'-8\"");
  }

  @Test
  void a_prescribed_limit_is_told_apart_from_what_is_worked_out() {
    // 2.1 times 83 in over 3.5 in.
    assertThat(flat("same-place", "posts", Reader.BUILDER))
        .contains("- Prescribed: effective height over width, not over 50: 49.8 of 50 (NDS")
        .doesNotContain("99.6 %", "100 %");
  }

  @Test
  void a_slenderness_is_no_share() {
    // Boards 195 mm deep and 45 mm thick over bays of 1550 mm: 1.63 times the bay and three depths
    // are 3112 mm; the root of 3112 x 195 / 45^2.
    assertThat(flat("metric-country", "headers", Reader.BUILDER))
        .contains("Prescribed: slenderness as a beam, R_B not over 50: 17.3 of 50");
  }

  @Test
  void what_is_kept_is_told_in_one_length_however_it_was_rounded() {
    // 9 in are 228.6 mm, which a metric yard cuts as 228.
    String metric =
        WhyText.of(
                Demo.proposal("metric yard"),
                Demo.words(),
                Demo.words().subjects().find("header.overhang"),
                Optional.empty(),
                Reader.BUILDER,
                PrintOptions.plain(UnitSystem.METRIC))
            .replaceAll("\\s+", " ");
    assertThat(metric).contains("228 mm, as in the base. The base has 228 mm.");
  }

  @Test
  void a_value_nobody_has_seen_in_print_says_so() {
    assertThat(flat("same-place", "posts", Reader.BUILDER)).contains(", from memory)");
  }

  @Test
  void the_engineer_gets_checks_clauses_and_the_way_back_each_step_once() {
    String text = why("wisteria-court", "posts", Reader.ENGINEER);
    assertThat(text)
        .containsSubsequence(
            "post.size = 8x8 (base 6x6)",
            "- * posts.size.check: 6x6: post.",
            "post. ",
            "drift ",
            "Clauses",
            "Because",
            "post.size = 8x8 <- posts.size.check",
            "criteria.vine = wisteria <- climate.vine.planted",
            "site file: planting");
    List<String> steps =
        Arrays.stream(text.substring(text.indexOf("Because\n")).split("\n"))
            .filter(line -> line.contains(" <- "))
            .map(String::strip)
            .toList();
    assertThat(steps).doesNotHaveDuplicates().hasSizeGreaterThan(5);
  }

  @Test
  void a_thing_that_this_structure_has_not_says_so() {
    assertThat(flat("same-place", "brace.size", Reader.CLIENT))
        .contains("Nothing had to be decided: this structure has none.");
    assertThat(flat("too-much-snow", "posts", Reader.CLIENT))
        .contains("Nothing was decided: the site is a case for a licensed engineer.");
  }

  @Test
  void markdown_tells_the_same() {
    assertThat(
            WhyMarkdown.of(
                Demo.proposal("wisteria-court"),
                Demo.words(),
                Demo.words().subjects().find("posts"),
                Optional.empty(),
                Reader.CLIENT,
                PLAIN))
        .startsWith("# How thick the posts are\n")
        .contains("\n## Also about this\n");
  }

  private static String why(String site, String subject, Reader reader) {
    return WhyText.of(
        Demo.proposal(site),
        Demo.words(),
        Demo.words().subjects().find(subject),
        Optional.empty(),
        reader,
        PLAIN);
  }

  private static String flat(String site, String subject, Reader reader) {
    return why(site, subject, reader).replaceAll("\\s+", " ");
  }

  /** Without the rule under the title. */
  private static String body(String text) {
    return text.replaceAll("(?m)^[=-]+$", "");
  }
}
