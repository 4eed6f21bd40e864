package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A site file that names several bases, from command to answer. */
class SeveralBasesTest {
  private static final String SITE = "scenarios/orchard-gap.yaml";
  private static final String ALONE = "base=base/hop-walk.yaml";
  private static final String TAKEN = "Worked from the Hop walk, one of the 3 bases named";

  private static String out(String... command) {
    return Run.of(command).endedWith(ExitStatus.ANSWERED).out();
  }

  private static String flat(String... command) {
    return out(command).replaceAll("\\s+", " ");
  }

  @Test
  void the_proposal_is_that_of_the_taken_base_named_alone_to_the_last_number() {
    JsonMapper mapper = new JsonMapper();
    ObjectNode several = (ObjectNode) mapper.readTree(out("propose", SITE, "--format", "json"));
    JsonNode alone = mapper.readTree(out("propose", SITE, "--set", ALONE, "--format", "json"));

    assertThat(several.remove("bases")).hasSize(3);
    ArrayNode decisions = (ArrayNode) several.get("decisions");
    JsonNode last = decisions.remove(decisions.size() - 1);
    assertThat(last.get("subject").asString()).isEqualTo("base");
    assertThat(last.get("proposed").asString()).isEqualTo("Hop walk");
    assertThat(several).isEqualTo(alone);
  }

  @Test
  void with_one_base_nothing_is_said_of_choosing() {
    assertThat(flat("propose", SITE, "--set", ALONE)).doesNotContain("bases named");
    assertThat(out("propose", SITE, "--set", ALONE, "--format", "json"))
        .doesNotContain("\"bases\"", "base.choice");
  }

  @Test
  void it_is_said_in_a_paragraph_what_was_taken_and_what_the_others_would_have_changed() {
    assertThat(flat("propose", SITE))
        .contains(
            "Of the 3 bases named, this starts from the Hop walk, which comes nearest to what is"
                + " asked here. The Rose gate would have to be built differently in 1 way, the"
                + " Hop walk in none. What would change: header style, post size, header size and"
                + " crossbeam joint.");
  }

  @Test
  void a_refusal_from_another_base_is_told_in_a_line() {
    assertThat(
            flat(
                "propose",
                SITE,
                "--set",
                "base=[base/kiwi-court.yaml,base/hop-walk.yaml]",
                "--set",
                "site.climate.wind-speed=138 mph",
                "--set",
                "site.climate.exposure=D",
                "--set",
                "site.soil=clay",
                "--set",
                "walkway.clear-width=9 ft"))
        .contains("From the Kiwi court nothing can be built here. What rules it out is ");
  }

  @Test
  void where_every_base_is_refused_the_nearest_is_told_and_then_the_others() {
    String refused =
        Run.of("propose", SITE, "--set", "site.climate.ground-snow=100 psf")
            .endedWith(ExitStatus.NEEDS_ENGINEER)
            .out()
            .replaceAll("\\s+", " ");

    assertThat(refused)
        .contains(
            "Nothing can be built here from any of the 3 bases named; this is told of the Rose"
                + " gate, which comes nearest.")
        .contains("Nothing tells the Hop walk from the Rose gate, which the site file names first");
  }

  @ParameterizedTest
  @ValueSource(strings = {"client", "builder", "engineer"})
  void why_base_explains_it_to_each_reader(String reader) {
    Golden.compare(
        "why/orchard-gap-base-" + reader + ".txt", out("why", SITE, "base", "--for", reader));
  }

  @Test
  void why_base_of_one_base_says_that_there_was_no_choice() {
    assertThat(flat("why", SITE, "base", "--set", ALONE))
        .contains("The site file names one base, the Hop walk.");
  }

  @Test
  void answers_about_something_else_say_which_base_they_are_worked_from() {
    String design = "scenarios/base/hop-walk.yaml";
    for (List<String> command :
        List.of(
            List.of("why", SITE, "posts"),
            List.of("why", SITE, "posts", "--keep", "4x4"),
            List.of("depths", SITE),
            List.of("check", SITE, "--design", design))) {
      assertThat(flat(command.toArray(String[]::new))).as("%s", command).contains(TAKEN);
    }
    assertThat(flat("why", SITE, "posts", "--set", ALONE)).doesNotContain("Worked from");
  }

  @Test
  void programs_find_the_choice_of_the_base_in_every_answer_worked_from_it() {
    JsonMapper mapper = new JsonMapper();
    JsonNode bases = mapper.readTree(out("propose", SITE, "--format", "json")).get("bases");
    String design = "scenarios/base/hop-walk.yaml";
    for (List<String> command :
        List.of(
            List.of("limits", SITE, "posts"),
            List.of("check", SITE, "--design", design),
            List.of("why", SITE, "posts"),
            List.of("why", SITE, "posts", "--keep", "6x6"),
            List.of("depths", SITE))) {
      List<String> asked = new ArrayList<>(command);
      asked.addAll(List.of("--format", "json"));
      JsonNode answer = mapper.readTree(out(asked.toArray(String[]::new)));
      assertThat(answer.get("bases")).as("%s", command).isEqualTo(bases);
    }
  }

  @Test
  void a_comparison_starts_each_column_from_the_base_taken_there() {
    assertThat(flat("compare", SITE, "--set", "walkway.length=34 in"))
        .contains(
            "A: Walk through the orchard gap (scenarios/orchard-gap.yaml), from the Hop walk",
            "with walkway.length=34 in, from the Rose gate");
  }
}
