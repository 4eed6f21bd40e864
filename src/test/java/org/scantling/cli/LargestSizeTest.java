package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** No timber larger than the site file allows, and a fill that it names. */
class LargestSizeTest {
  private static final String LANE = "scenarios/mower-lane.yaml";

  @Test
  void crossbeams_are_no_larger_than_asked_and_the_reason_says_so() {
    String porch = "scenarios/bean-row.yaml";
    String wish = "preferences.largest-crossbeam=2x6";

    assertThat(answer(propose(porch), "crossbeam.size")).isEqualTo("2x8");
    assertThat(answer(propose(porch, wish), "crossbeam.size")).isEqualTo("2x6");
    assertThat(Run.of("why", porch, "crossbeam.size", "--set", wish).endedWith(0).out())
        .contains("no crossbeam larger than 2x6");
  }

  @Test
  void where_no_size_is_small_enough_the_wish_is_blamed() {
    Run run = Run.of("propose", LANE, "--set", "preferences.largest-post=4x4");

    assertThat(run.endedWith(ExitStatus.NEEDS_ENGINEER).out())
        .contains("preferences.largest-post")
        .contains("largest post");
  }

  @Test
  void a_size_that_no_yard_has_is_refused_where_it_stands() {
    Run run = Run.of("propose", LANE, "--set", "preferences.largest-post=5x5");

    assertThat(run.endedWith(ExitStatus.WRONG_INPUT).err()).contains("largest-post", "4x4");
  }

  @Test
  void the_fill_that_is_asked_for_goes_into_the_holes() {
    for (String fill : List.of("gravel", "tamped-soil", "concrete")) {
      JsonNode proposal = propose(LANE, "preferences.footing=" + fill);

      assertThat(answer(proposal, "footing.kind")).isEqualTo("embedded");
      assertThat(answer(proposal, "footing.backfill")).isEqualTo(fill);
    }
  }

  @Test
  void in_rock_it_is_concrete_all_the_same_and_a_caution_says_so() {
    String[] rock = {
      "propose", LANE, "--set", "site.soil=bedrock", "--set", "preferences.footing=gravel"
    };

    assertThat(Run.of(rock).endedWith(0).out().replaceAll("\\s+", " "))
        .contains("The site file asks for gravel in the holes, and concrete goes in");
  }

  private static JsonNode propose(String site, String... settings) {
    String[] words = new String[4 + 2 * settings.length];
    words[0] = "propose";
    words[1] = site;
    words[2] = "--format";
    words[3] = "json";
    for (int i = 0; i < settings.length; i++) {
      words[4 + 2 * i] = "--set";
      words[5 + 2 * i] = settings[i];
    }
    return JsonMapper.shared().readTree(Run.of(words).endedWith(0).out());
  }

  private static String answer(JsonNode proposal, String question) {
    for (JsonNode decision : proposal.path("decisions")) {
      String asked =
          decision.path("subject").asString() + "." + decision.path("attribute").asString();
      if (asked.equals(question)) {
        return decision.path("proposed").asString();
      }
    }
    throw new AssertionError(question + " is not decided");
  }
}
