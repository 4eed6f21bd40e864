package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.quantity.Length;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.words.Reader;

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
        .startsWith("Build the Hop walk 44'-0\" long in 9 bays, 8'-6\" clear between");
    assertThat(text.replaceAll("\\s+", " "))
        .contains("things change: crossbeams 4x6 (was 2x6); headers a pair of 2x10, bolted");
    assertThat(text)
        .containsSubsequence(
            "Then and now",
            "What to build",
            "Why\n",
            "- Headroom needed: 8'-2\"",
            "- Number of bays: 9, was 4.",
            "- Crossbeam size: 4x6, was 2x6.",
            "- Header size:",
            "- Post size: 8x8, was 6x6. 6x6 would not pass this check: ",
            "- Hole depth:",
            "Take care",
            "Given in the site file",
            "frost depth 5'-0\"; ",
            "Assumed, because the file does not say",
            "- Species: No species is stated; Douglas fir-larch");
  }

  @Test
  void a_change_is_told_with_what_bears_on_it_and_its_source() {
    assertThat(text("wisteria-court").replaceAll("\\s+", " "))
        .containsPattern(
            "- Post size: 8x8, was 6x6\\. .*, 3\\.9\\.2\\) Because these changed, largest effect first: climber and headroom needed")
        .contains("Because this changed: climber.");
    assertThat(flat("mower-lane"))
        .containsPattern(
            "- Crossbeam size: 2x8, was 2x6\\. .* Because these changed, largest effect first: crossbeam overhang, clear width and post size\\.");
    assertThat(flat("windy-hill"))
        .contains(
            "Because these changed, largest effect first: wind speed, number of bays (a post inside");
  }

  @Test
  void where_nothing_asks_for_more_nothing_changes_and_the_checks_are_told() {
    String text = ProposalText.of(Demo.proposal("calmer"), Demo.words(), PLAIN);
    assertThat(text)
        .containsPattern(
            "Nothing changes: every size,\\s+every\\s+hole\\s+and\\s+every\\s+joint\\s+stays\\s+as\\s+in\\s+the\\s+base\\.")
        .contains("As in the base: ", "- Post size 4x4: tightest on ")
        .doesNotContain("\nWhy\n");
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
            "                  base design             here",
            "Frost depth       2'-6\"                   5'-0\"",
            "Holes             3'-4\" deep, 1'-8\" wide  5'-0\" deep, 1'-8\" wide",
            "Crossbeam joints  not in its file         two slanted screws at each header");
  }

  @Test
  void a_site_outside_the_rules_is_told_what_breaks_it_and_what_would_help() {
    assertThat(text("too-much-snow").replaceAll("\\s+", " "))
        .contains(
            "This is a case for a licensed engineer.",
            "95 psf of snow on the ground is more than these rules cover, which stop at 70 psf.",
            "That is 36 % over.",
            "With snow on the ground of 70 psf or less (--set \"site.climate.ground-snow=...\")")
        .contains("What to ask the engineer", "can be built here with snow on the ground of 95 psf")
        .contains("Take care --------- - Ask the building department", "Call the utility locator")
        .contains("Given in the site file")
        .doesNotContain("Then and now", "Kept, and checked again", "What to build", "pounds");
  }

  @Test
  void a_question_without_an_answer_names_the_option_that_came_closest() {
    Proposal proposal = Demo.proposal("no header joint serves");
    assertThat(proposal.proposed()).isFalse();
    assertThat(text("no header joint serves").replaceAll("\\s+", " "))
        .contains("No header joint works; what weighs most is the snow on the ground")
        .contains(
            "The one that comes closest is four 1/2 in bolts through the post. Four 1/2 in bolts"
                + " through the post would not pass this check: ",
            " % over,")
        .contains("A smaller snow on the ground (--set \"site.climate.ground-snow=...\")");
  }

  @Test
  void what_a_decision_brought_about_is_no_cause_of_it() {
    // The posts made the headers paired and deep, not the other way round.
    assertThat(flat("windy-hill").replaceAll(".*- Post size: (.*?) - Hole depth: .*", "$1"))
        .startsWith("6x6, was 4x4.")
        .doesNotContain("header size", "header style");
  }

  @Test
  void the_headline_counts_everything_that_is_new_or_not_as_proven() {
    // The bay, the crossbeams, the standing, the braces, the pickets, and three kinds of joints.
    assertThat(flat("stone-terrace"))
        .contains("8 things change: posts on brackets, concrete (was posts in the")
        .contains("; knee braces added, 4x4, ")
        .contains("; crossbeam joints stronger than usual, four slanted screws at each header; ")
        .contains("; and 3 more, in the table below.")
        .doesNotContain("stays as in the base");
    for (String site : Demo.all().keySet()) {
      if (Demo.proposal(site).proposed()) {
        List<Compared> lines =
            new Comparison(
                    Told.to(Reader.BUILDER, Demo.proposal(site), Demo.words(), UnitSystem.IMPERIAL))
                .lines();
        long novel = lines.stream().filter(each -> each.novel() && !each.place()).count();
        assertThat(flat(site))
            .as(site)
            .contains(
                novel == 0
                    ? "Nothing changes"
                    : novel == 1 ? "One thing changes" : novel + " things change");
      }
    }
  }

  @Test
  void a_thing_whose_value_names_it_is_named_once() {
    // 40 % of a bay of 16'-4" in three: 2'-2 1/8".
    assertThat(flat("heavy-snow"))
        .contains(
            "7 things change: knee braces, 4x4, 2'-2 1/8\" legs (was knee braces, 4x4, 2'-6\" legs);")
        .doesNotContain("braces knee braces");
  }

  @Test
  void checks_that_pass_against_guesses_say_so_in_one_breath() {
    assertThat(flat("sloping-path"))
        .containsPattern(
            "All \\d+ checks pass, but against a first estimate: frost depth, snow on the ground,"
                + " wind speed, exposure and soil are assumed, not given\\.");
    assertThat(flat("windy-hill")).containsPattern("All \\d+ checks pass; the tightest");
  }

  @Test
  void the_tightest_check_told_is_one_that_is_worked_out() {
    for (String site : Demo.all().keySet()) {
      assertThat(flat(site).replaceAll("(Then and now|As in the base:).*", ""))
          .as(site)
          .doesNotContain("not over 50", "edge, end, spacing", " 100 % of its limit");
    }
    // 5'-5 1/4" is asked for, dug as 5'-6": 65.25 of 66 in.
    assertThat(flat("everything-at-once"))
        .contains("99 % of its limit", "the hole depth is chosen to meet exactly that");
  }

  @Test
  void all_that_the_site_file_gives_is_listed_as_given() {
    assertThat(flat("sloping-path"))
        .contains("Given in the site file", "hardiness zone 6; ", "falls 6 % along the walk; ")
        .contains("on ground that falls 6 % along the walk, the top following the ground.");
    assertThat(flat("heavy-snow")).contains("snow that stays on the top: all of it");
    assertThat(flat("stone-terrace")).contains("footing: posts on brackets.");
    assertThat(flat("mower-lane"))
        .contains("wide enough for two people side by side; a machine 6'-0\" wide; ");
    assertThat(flat("step-free")).contains("two wheelchairs passing");
    assertThat(flat("same-place"))
        .contains("A walk 2'-10\" long; frost depth 2'-6\"; ", "climber climbing rose.");
  }

  @Test
  void over_a_stepped_fall_the_headroom_told_is_the_one_needed() {
    assertThat(flat("stepped"))
        .contains(
            "and 8'-6\" clear overhead in the walk, on ground that falls 12 % along the walk,")
        .contains("the top in level steps.", "Headroom needed 8'-2\" 8'-6\"");
  }

  @Test
  void what_to_build_lists_pieces_holes_joints_and_bolts() {
    // Posts: 4'-5" in the ground, 7'-3" clear and 7 1/4" of header. Crossbeams: 4'-8" from row to
    // row, 5 1/2" of post, two boards of 1 1/2" and two tails of 1'-2". The bolts of a 2x8 stand 4
    // of their diameters, 2", from each edge, which leaves 3 1/4" between them.
    assertThat(text("windy-hill"))
        .containsSubsequence(
            "What to build\n",
            "            pieces  size  length of each  together\n",
            "Posts       6       6x6   12'-3 1/4\"      73'-7 1/2\"\n",
            "Crossbeams  7       2x6   7'-8 1/2\"       53'-11 1/2\"\n");
    assertThat(flat("windy-hill"))
        .containsSubsequence(
            "Western cedars No.2 throughout",
            "4'-5\" of each post is in the ground.",
            "- Holes: 6, 4'-5\" deep and 1'-8\" wide, gravel around the posts; dig 8\" deeper for the bed",
            "- Crossbeam joint: four No. 14 x 4 in structural screws at each header, slanted,",
            "14 joints, 56 in all.",
            "- Header joint: two 1/2 in through bolts",
            "the upper 2\" below the top of the post, the lower 3 1/4\" below the upper.");
    assertThat(flat("stone-terrace"))
        .contains("- Braces: 4 across the walk and 4 along it; each reaches 1'-4\" or more down")
        .contains("- Piers: 4, 3'-4\" deep and 1'-8\" wide, of concrete, a post bracket on each.");
    assertThat(flat("step-free"))
        .contains(
            "The yard sells no 2x8 longer than 20'-0\": each header is in pieces over 5 and 3 bays");
  }

  private static final Pattern PIECES =
      Pattern.compile("(?m)^\\S[^\\d\\n]*? {2,}(\\d+) {2,}\\S+ {2,}(\\S.*?) {2,}(\\S.*?)$");

  /** Eleven pieces of 2.883 m were told to be 31.712 m together. */
  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void what_pieces_come_to_together_is_the_readers_own_sum(UnitSystem units) {
    int sums = 0;
    for (Proposal proposal : Demo.withRare()) {
      String text = ProposalText.of(proposal, Demo.words(), PrintOptions.plain(units));
      String[] parts = text.split("length of each {2,}together\n", -1);
      Matcher row = PIECES.matcher(parts.length > 1 ? parts[1].split("\n\n", -1)[0] : "");
      while (row.find()) {
        double each = Length.parse(row.group(2));
        assertThat(Length.parse(row.group(3)))
            .as(proposal.title() + ": " + row.group())
            .isCloseTo(Integer.parseInt(row.group(1)) * each, within(1e-6));
        sums++;
      }
    }
    assertThat(sums).isGreaterThan(100);
  }

  @Test
  void the_class_of_timber_for_the_ground_is_asked_for_where_posts_stand_in_it() {
    assertThat(flat("wisteria-court")).contains("the tag on each piece says UC4B");
    assertThat(flat("heavy-snow")).doesNotContain("UC4B");
    assertThat(flat("stone-terrace")).doesNotContain("UC4B");
  }

  @Test
  void guesses_are_listed_as_assumptions_and_not_as_reasons() {
    String text = text("sloping-path");
    assertThat(text)
        .containsSubsequence(
            "Assumed, because the file does not say", "- Wind speed: 115 mph is a guess");
    assertThat(text.substring(text.indexOf("\nWhy\n"), text.indexOf("Take care")))
        .doesNotContain("guess");
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
    // 15 of 96 in is 15 5/16 of 98. Rows 8'-2" apart, posts of 7 1/2" and two boards of 1 1/2"
    // leave 35 1/2" of 12'-0" for two tails.
    assertThat(flat("wisteria-court"))
        .contains(
            "Lengthened from 1'-3 5/16\": 1'-5 3/4\" makes each 12'-0\" long, a length the yard");
    // 17'-6" and a post of 5 1/2" leave 24 1/2" of 20'-0" for two tails; the base's would make
    // 20'-3 1/2".
    assertThat(flat("bean-row"))
        .contains("Shortened from 1'-2\": 1'-0 1/4\" makes each 20'-0\" long, a length the yard");
  }

  @Test
  void the_pressure_and_the_width_of_the_soil_are_told_with_what_they_are() {
    // The diagonal of a post of 5 1/2 in: 7.78 in.
    assertThat(flat("step-free"))
        .contains(" over 7 3/4\" of soil, the diagonal of the post.")
        .contains("at a third of that depth, times 2 because the posts stand apart.");
    assertThat(flat("everything-at-once"))
        .contains(" over 1'-11\" of soil, the width of the concrete.");
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
        .startsWith("# Gate at Kettle Ridge\n")
        .contains("\n## Then and now\n", "| Frost depth | 2'-6\" | 5'-0\" |", "- **Hole depth:** ");
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
