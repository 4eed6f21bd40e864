package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What programs may rely on: the keys of the proposal as JSON, and what each proposal promises of
 * itself.
 */
class ContractTest {
  private static final JsonMapper JSON = new JsonMapper();
  private static final List<String> SOURCE_KINDS =
      List.of("standard", "handbook", "common-practice", "house-rule", "preference", "calculation");

  static List<String> proposed() throws IOException {
    return ScenarioTest.scenarios().stream()
        .filter(name -> !ScenarioTest.REFUSED.contains(name))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("proposed")
  void every_key_is_there(String name) {
    JsonNode proposal = proposal(name);
    assertThat(proposal.get("schema").asString()).isEqualTo("scantling/proposal/1");
    assertThat(proposal.get("status").asString()).isEqualTo("proposed");
    keys(proposal, "title", "base", "criteria", "layout", "members", "footings", "checks");
    keys(proposal, "decisions", "cautions", "turningPoints");
    keys(proposal.get("base"), "title");
    keys(
        proposal.get("criteria"),
        "frostDepthIn",
        "groundSnowPsf",
        "windSpeedMph",
        "exposure",
        "soil",
        "vinePsf",
        "livePsf",
        "snowPsf",
        "windPressurePsf",
        "clearWidthIn",
        "headroomIn");
    keys(
        proposal.get("layout"),
        "rowSpacingIn",
        "bays",
        "bayIn",
        "lengthIn",
        "bayDiagonalIn",
        "overallDiagonalIn",
        "clearWidthIn",
        "headroomIn",
        "headerOverhangIn",
        "crossbeamOverhangIn",
        "crossbeamSpacingIn",
        "crossbeamCount",
        "headerTopIn",
        "postCount");
    keys(proposal.get("footings"), "kind", "depthIn", "diameterIn", "count", "backfill");
    for (JsonNode member : proposal.get("members")) {
      keys(member, "role", "size", "plies", "widthIn", "depthIn", "lengthIn", "count");
      keys(member, "species", "grade", "notches");
      member.get("notches").forEach(notch -> keys(notch, "face", "atIn", "widthIn", "depthIn"));
    }
  }

  @ParameterizedTest
  @MethodSource("proposed")
  void every_check_passes_and_names_its_source(String name) {
    JsonNode checks = proposal(name).get("checks");
    assertThat(checks).hasSizeGreaterThan(20);
    for (JsonNode check : checks) {
      keys(check, "id", "role", "combination", "loadDuration", "demand", "capacity", "unit");
      keys(check, "limitRatio", "baseRatio");
      assertThat(check.get("ratio").asDouble())
          .as(check.toString())
          .isLessThanOrEqualTo(check.get("limitRatio").asDouble());
      assertThat(check.get("source").toString()).isNotBlank();
    }
  }

  @ParameterizedTest
  @MethodSource("proposed")
  void every_decision_has_a_reason_with_a_source(String name) {
    for (JsonNode decision : proposal(name).get("decisions")) {
      keys(decision, "subject", "attribute", "base", "proposed", "changed", "reasons", "rejected");
      assertThat(decision.get("reasons")).as(decision.toString()).isNotEmpty();
      for (JsonNode reason : decision.get("reasons")) {
        keys(reason, "rule", "text", "source", "governing", "because");
        assertThat(reason.get("text").asString()).as(reason.toString()).isNotBlank();
        assertThat(reason.get("source").get("kind").asString()).isIn(SOURCE_KINDS);
        assertThat(reason.get("source").get("citation").asString()).isNotBlank();
      }
      assertThat(decision.get("reasons").get(0).get("governing").asBoolean()).isTrue();
      for (JsonNode rejected : decision.get("rejected")) {
        keys(rejected, "option", "rule", "check", "ratio", "text");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("proposed")
  void the_proposal_as_a_design_file_is_yaml_that_starts_with_its_title(String name) {
    String yaml =
        Run.of("propose", "scenarios/" + name + ".yaml", "--format", "yaml")
            .endedWith(ExitStatus.ANSWERED)
            .out();
    assertThat(yaml).startsWith("title: ").contains("posts:", "headers:", "crossbeams:");
  }

  private static JsonNode proposal(String name) {
    return JSON.readTree(
        Run.of("propose", "scenarios/" + name + ".yaml", "--format", "json")
            .endedWith(ExitStatus.ANSWERED)
            .out());
  }

  private static void keys(JsonNode node, String... keys) {
    for (String key : keys) {
      assertThat(node.has(key)).as("%s in %s", key, node).isTrue();
    }
  }
}
