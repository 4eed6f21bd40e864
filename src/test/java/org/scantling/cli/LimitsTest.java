package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How far choices hold, from file to printed answer. */
class LimitsTest {
  private static final String LANE = "scenarios/mower-lane.yaml";

  @Test
  void every_choice_of_a_site_reads_as_expected() {
    String text = Run.of("limits", LANE).endedWith(ExitStatus.ANSWERED).out();

    Golden.compare("limits/mower-lane.txt", text);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(text).contains("no climber").doesNotContain("none as the climber");
  }

  @Test
  void one_subject_is_told_in_full_and_in_metric() {
    String text =
        Run.of("limits", LANE, "posts", "--units", "metric").endedWith(ExitStatus.ANSWERED).out();

    Golden.compare("limits/mower-lane-posts.txt", text);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_choice_that_comes_back_and_one_that_turns_with_words() {
    String text =
        Run.of("limits", LANE, "crossbeam", "--format", "markdown")
            .endedWith(ExitStatus.ANSWERED)
            .out();

    Golden.compare("limits/mower-lane-crossbeam.md", text);
  }

  @Test
  void a_site_without_a_structure_is_told_what_would_make_one_possible() {
    String text =
        Run.of("limits", "scenarios/too-much-snow.yaml").endedWith(ExitStatus.NEEDS_ENGINEER).out();

    Golden.compare("limits/too-much-snow.txt", text);
  }

  @Test
  void programs_find_the_keys_of_the_contract() {
    Run run = Run.of("limits", LANE, "--format", "json").endedWith(ExitStatus.ANSWERED);
    JsonNode root = JsonMapper.shared().readTree(run.out());

    assertThat(root.get("schema").asString()).isEqualTo("scantling/limits/1");
    assertThat(root.get("turningPoints")).hasSizeGreaterThan(20);
    Set<String> directions = new HashSet<>();
    for (JsonNode point : root.get("turningPoints")) {
      assertThat(point.propertyNames())
          .contains(
              "subject",
              "attribute",
              "demand",
              "unit",
              "direction",
              "at",
              "from",
              "to",
              "governs",
              "text");
      boolean word = point.get("unit").asString().equals("word");
      assertThat(point.has("step")).isNotEqualTo(word);
      if (!word) {
        double gap = point.get("beyond").asDouble() - point.get("at").asDouble();
        assertThat(Math.abs(gap)).isEqualTo(point.get("step").asDouble());
        assertThat(gap > 0).isEqualTo(point.get("direction").asString().equals("up"));
      }
      directions.add(point.get("direction").asString());
    }
    assertThat(directions).containsExactlyInAnyOrder("up", "down");
    assertThat(root.get("searched")).hasSizeGreaterThanOrEqualTo(10);
  }

  @Test
  void what_is_given_has_no_turning_point_and_says_so() {
    Run run = Run.of("limits", LANE, "snow").endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err())
        .isEqualToNormalizingWhitespace(
            "'snow' is given, or follows every inch of a demand, so there is no value at which it"
                + " turns. Maybe ask about posts, headers, crossbeams, bays, footings or joints.\n");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void a_subject_that_nobody_knows_is_refused() {
    Run run = Run.of("limits", LANE, "pergla").endedWith(ExitStatus.WRONG_INPUT);

    assertThat(run.err()).startsWith("'pergla' is nothing that is decided.");
  }
}
