package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Proposals side by side. */
class CompareCommandTest {
  private static final String WALK = "scenarios/long-walk.yaml";
  private static final String HILL = "scenarios/windy-hill.yaml";
  private static final String SADDLE = "scenarios/too-much-snow.yaml";
  private static final String LANE = "scenarios/mower-lane.yaml";

  @Test
  void a_client_reads_what_each_is_like_and_why_in_plain_words() {
    String text =
        compare(
                WALK,
                "--set",
                "walkway.clear-width=7ft",
                "--set",
                "preferences.footing=concrete",
                "--for",
                "client")
            .out();

    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(text).doesNotContain("psi", "psf", "ratio", "[", "]");
    Golden.compare("compare-client.txt", text);
  }

  @Test
  void sites_read_side_by_side_and_a_refused_one_is_shown_as_such() {
    String text = compare(WALK, HILL, SADDLE).out();
    Golden.compare("compare-sites.txt", text);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void one_site_reads_beside_itself_with_other_wishes() {
    String text =
        compare(
                LANE,
                "--set",
                "walkway.length=44ft",
                "--set",
                "walkway.clear-width=8ft; site.climate.ground-snow=60psf")
            .out();
    Golden.compare("compare-wishes.txt", text);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void six_columns_still_fit_and_markdown_has_the_same_words() {
    String[] asked = {
      WALK, HILL, LANE, "scenarios/heavy-snow.yaml", "scenarios/stone-terrace.yaml", SADDLE
    };
    assertThat(compare(asked).out().lines()).allMatch(line -> line.length() <= 80);
    String[] markdown = {WALK, HILL, "--format", "markdown"};
    Golden.compare("compare-sites.md", compare(markdown).out());
  }

  @Test
  void programs_get_what_differs_first_and_a_reason_for_every_answer() {
    JsonNode found = json(WALK, HILL, SADDLE);
    assertThat(found.get("sites")).hasSize(3);
    assertThat(found.get("sites").get(2).get("status").asString()).isEqualTo("needs-engineer");
    assertThat(found.get("sites").get(2).get("demand").asString())
        .isEqualTo("site.climate.ground-snow");
    List<Boolean> differs = new ArrayList<>();
    for (JsonNode decision : found.get("decisions")) {
      differs.add(decision.get("differs").asBoolean());
      for (JsonNode value : decision.get("values")) {
        assertThat(value.get("site").asString()).isIn("A", "B");
        assertThat(value.get("reason").get("text").asString()).isNotBlank();
        assertThat(value.get("reason").get("source").get("citation").asString()).isNotBlank();
      }
    }
    assertThat(differs).contains(true, false).isSortedAccordingTo((a, b) -> b.compareTo(a));
  }

  @Test
  void an_answer_is_called_different_exactly_where_it_is() {
    for (JsonNode decision : json(WALK, HILL).get("decisions")) {
      JsonNode values = decision.get("values");
      boolean same =
          values.size() == 2 && values.get(0).get("proposed").equals(values.get(1).get("proposed"));
      assertThat(decision.get("differs").asBoolean()).as(decision.toString()).isNotEqualTo(same);
    }
  }

  @Test
  void the_same_site_twice_differs_in_nothing() {
    assertThat(compare(WALK, WALK).out())
        .contains("Nothing of the structure differs.")
        .doesNotContain("What differs", "Why they differ");
  }

  @Test
  void what_is_the_same_is_not_said_of_a_site_that_has_no_structure() {
    assertThat(run(WALK, HILL, SADDLE).out())
        .contains("The same in all that have a structure")
        .doesNotContain("The same in all\n");
    assertThat(run(WALK, SADDLE).out()).doesNotContain("The same in all");
    assertThat(compare(WALK, HILL).out()).contains("The same in all\n");
  }

  @Test
  void with_several_sites_a_setting_holds_for_all() {
    JsonNode sites =
        json(WALK, HILL, "--set", "site.climate.ground-snow=99psf", "needs").get("sites");
    assertThat(sites).allMatch(site -> site.get("status").asString().equals("needs-engineer"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        WALK,
        WALK + " " + WALK + " " + WALK + " " + WALK + " " + WALK + " " + WALK + " " + WALK
      })
  void fewer_than_two_and_more_than_six_are_refused(String sites) {
    String[] asked = ("compare " + sites).split(" ", -1);
    assertThat(Run.of(asked).endedWith(ExitStatus.WRONG_INPUT).err()).startsWith("compare: ");
  }

  @Test
  void a_wrong_setting_or_file_is_told_and_nothing_is_answered() {
    Run run = Run.of("compare", WALK, "--set", "walkway.lenght=44ft");
    assertThat(run.endedWith(ExitStatus.WRONG_INPUT).err()).contains("Maybe length?");
    assertThat(run.out()).isEmpty();
    assertThat(Run.of("compare", WALK, "nowhere.yaml").endedWith(ExitStatus.WRONG_INPUT).err())
        .startsWith("nowhere.yaml:");
  }

  private static Run compare(String... words) {
    return run(words).endedWith(ExitStatus.ANSWERED);
  }

  private static Run run(String... words) {
    List<String> all = new ArrayList<>(List.of("compare"));
    all.addAll(List.of(words));
    return Run.of(all.toArray(String[]::new));
  }

  private static JsonNode json(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    boolean refused = all.remove("needs");
    all.addAll(List.of("--format", "json"));
    int status = refused ? ExitStatus.NEEDS_ENGINEER : ExitStatus.ANSWERED;
    return new JsonMapper().readTree(run(all.toArray(String[]::new)).endedWith(status).out());
  }
}
