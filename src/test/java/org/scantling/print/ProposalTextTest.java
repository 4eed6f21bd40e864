package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;

class ProposalTextTest {
  private static final PrintOptions PLAIN = PrintOptions.plain(UnitSystem.IMPERIAL);

  @Test
  void no_line_is_wider_than_asked_for_any_site_and_width() {
    SoftAssertions all = new SoftAssertions();
    Demo.all()
        .forEach(
            (name, proposal) -> {
              for (UnitSystem units : UnitSystem.values()) {
                for (int width : new int[] {60, 80, 120}) {
                  String text =
                      ProposalText.of(
                          proposal, Demo.words(), new PrintOptions(units, false, width));
                  all.assertThat(text.lines().mapToInt(String::length).max().orElse(0))
                      .as(name + " in " + units + " at " + width)
                      .isLessThanOrEqualTo(width);
                }
              }
            });
    all.assertAll();
  }

  @Test
  void the_answer_comes_first_with_the_reasons_along_the_load_path() {
    String text = text("everything-at-once");
    assertThat(text.lines().limit(4).toList().get(3))
        .startsWith("Build the Herb garden arbour 40'-0\" long in 10 bays, 8'-0\" clear");
    assertThat(text)
        .containsSubsequence(
            "Then and now",
            "Why\n",
            "- Given in the site file: frost depth 4'-0\"",
            "- Least headroom: 8'-2\"",
            "- Number of bays: 10, was 1.",
            "- Crossbeam size: 2x6, was 2x4.",
            "- Header size:",
            "- Post size: 6x6, was 4x4. 4x4 would fail in",
            "- Hole depth:",
            "Take care",
            "Assumed, because the file does not say",
            "- Species: No species is stated; southern pine");
  }

  @Test
  void a_change_is_told_with_what_bears_on_it_and_its_source() {
    assertThat(text("wisteria-court").replaceAll("\\s+", " "))
        .containsPattern("- Post size: 6x6, was 4x4\\. .*\\(common practice\\) Changed and behind")
        .contains("Changed and behind it: climber.");
    assertThat(flat("windy-hill"))
        .containsPattern("- Crossbeam size: .* behind it, most first: crossbeam overhang, ")
        .contains("Changed and behind it, most first: exposure, number of bays (a post inside");
  }

  @Test
  void where_nothing_asks_for_more_nothing_changes_and_the_checks_are_told() {
    String text = text("same-place");
    assertThat(text)
        .containsPattern("Every timber and every hole\\s+stays as proven\\.")
        .contains("As proven: ", "- Post size 4x4: tightest in ")
        .doesNotContain("Then and now", "\nWhy\n");
  }

  @Test
  void the_table_is_short_and_tells_only_what_changed() {
    SoftAssertions all = new SoftAssertions();
    Demo.all()
        .forEach(
            (name, proposal) ->
                all.assertThat(table(ProposalText.of(proposal, Demo.words(), PLAIN)))
                    .as(name)
                    .hasSizeLessThan(25));
    all.assertAll();
    assertThat(table(text("deep-frost")))
        .containsExactly(
            "             base design             here",
            "Frost depth  3'-0\"                   5'-0\"",
            "Holes        3'-0\" deep, 1'-6\" wide  5'-0\" deep, 1'-6\" wide");
  }

  @Test
  void a_site_outside_the_rules_is_told_what_breaks_it_and_what_would_help() {
    assertThat(text("too-much-snow").replaceAll("\\s+", " "))
        .contains(
            "This is a case for a licensed engineer.",
            "95 psf of snow on the ground is more than these rules cover, which end at 70 psf.",
            "That is 36 % over.",
            "With snow on the ground of 70 psf or less (--set \"site.climate.ground-snow=...\")")
        .doesNotContain("Then and now", "Kept, and checked again");
  }

  @Test
  void a_question_without_an_answer_names_the_option_that_came_closest() {
    Proposal proposal = Demo.proposal("no crossbeam serves");
    assertThat(proposal.proposed()).isFalse();
    assertThat(text("no crossbeam serves").replaceAll("\\s+", " "))
        .contains("No crossbeam size serves; what weighs most in it is the clear width")
        .contains("The one that comes closest is 2x12. 2x12 would fail in ", " % over,")
        .contains("A smaller clear width (--set \"walkway.clear-width=...\")");
  }

  @Test
  void what_a_decision_brought_about_is_no_cause_of_it() {
    // The posts made the headers paired and deep, not the other way round.
    assertThat(flat("windy-hill").replaceAll(".*- Post size: (.*?) - Hole depth: .*", "$1"))
        .startsWith("6x6, was 4x4.")
        .doesNotContain("header size", "header style");
  }

  @Test
  void guesses_are_listed_as_assumptions_and_not_as_reasons() {
    String text = text("sloping-path");
    assertThat(text)
        .containsSubsequence(
            "Assumed, because the file does not say", "- Wind speed: 115 mph is guessed");
    assertThat(text.substring(text.indexOf("\nWhy\n"), text.indexOf("Take care")))
        .doesNotContain("guessed");
  }

  @Test
  void what_the_base_does_not_have_at_all_is_told_as_new() {
    String text = text(Demo.braced()).replaceAll("\\s+", " ");
    assertThat(text).containsPattern("Braces none knee braces, \\S+, .* legs");
    assertThat(text).containsPattern("- Brace size: \\S+, new here\\. ");
  }

  @Test
  void metric_readers_get_metric_numbers() {
    String text =
        ProposalText.of(
            Demo.proposal("deep-frost"), Demo.words(), PrintOptions.plain(UnitSystem.METRIC));
    assertThat(text).contains("1.524 m").doesNotContain("psf", "5'-0\"");
  }

  @Test
  void a_tail_is_told_as_lengthened_or_shortened_to_what_the_yard_sells() {
    assertThat(flat("windy-hill"))
        .contains("Lengthened from 10 9/16\": 1'-0 3/4\" makes each 8'-0\" long, as the yard");
    assertThat(flat("everything-at-once")).contains("Shortened from 1'-5 5/16\": 1'-5\" makes");
  }

  @Test
  void the_pressure_and_the_width_of_the_soil_are_told_with_what_they_are() {
    assertThat(flat("windy-hill"))
        .contains(" of soil, the diagonal of the post.")
        .contains("at a third of that depth, times 2 because the posts stand apart.");
    assertThat(flat("in concrete")).contains(" of soil, the width of the concrete.");
  }

  @Test
  void a_check_is_called_by_what_is_there() {
    assertThat(flat("windy-hill")).contains("cuts taken off").doesNotContain("the notch");
  }

  @Test
  void headings_are_bold_only_when_colour_is_asked_for() {
    Proposal proposal = Demo.proposal("deep-frost");
    String bold =
        ProposalText.of(proposal, Demo.words(), new PrintOptions(UnitSystem.IMPERIAL, true, 80));
    assertThat(bold).contains("\u001b[1mWhy\u001b[0m\n");
    assertThat(bold.replaceAll("\u001b\\[[01]m", "")).isEqualTo(text("deep-frost"));
  }

  @Test
  void markdown_tells_the_same_with_marks_of_its_own() {
    String markdown = ProposalMarkdown.of(Demo.proposal("deep-frost"), Demo.words(), PLAIN);
    assertThat(markdown)
        .startsWith("# Arbour at Kettle Ridge\n")
        .contains("\n## Then and now\n", "| Frost depth | 3'-0\" | 5'-0\" |", "- **Hole depth:** ");
  }

  private static String text(String name) {
    return ProposalText.of(Demo.proposal(name), Demo.words(), PLAIN);
  }

  private static String flat(String name) {
    return text(name).replaceAll("\\s+", " ");
  }

  private static List<String> table(String text) {
    List<String> lines = text.lines().toList();
    int from = lines.indexOf("Then and now");
    return from < 0
        ? List.of()
        : lines.subList(from + 2, lines.size()).stream()
            .takeWhile(line -> !line.isEmpty())
            .toList();
  }
}
