package org.scantling.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.scantling.design.Structure;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Question;
import org.scantling.words.Reader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ProposalJsonTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  @Test
  void a_proposal_has_the_keys_of_the_contract_in_a_stable_order() {
    JsonNode root = json("everything-at-once");
    assertThat(keys(root))
        .containsExactly(
            "schema",
            "status",
            "title",
            "base",
            "criteria",
            "layout",
            "members",
            "footings",
            "checks",
            "decisions",
            "cautions",
            "turningPoints",
            "assumptions",
            "workings",
            "symbols");
    assertThat(root.get("schema").asString()).isEqualTo("scantling/proposal/1");
    assertThat(root.get("status").asString()).isEqualTo("proposed");
    assertThat(keys(root.get("criteria")))
        .containsExactly(
            "frostDepthIn",
            "groundSnowPsf",
            "windSpeedMph",
            "exposure",
            "soil",
            "vine",
            "vinePsf",
            "livePsf",
            "snowPsf",
            "windPressurePsf",
            "clearWidthIn",
            "headroomIn");
    assertThat(keys(root.get("layout")))
        .contains(
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
    assertThat(keys(root.get("members").get(0)))
        .containsExactly(
            "role",
            "size",
            "plies",
            "widthIn",
            "depthIn",
            "lengthIn",
            "count",
            "species",
            "grade",
            "notches");
    assertThat(keys(root.get("footings")))
        .containsExactly("kind", "depthIn", "diameterIn", "count", "backfill");
    assertThat(keys(root.get("checks").get(0)))
        .containsExactly(
            "id",
            "role",
            "combination",
            "loadDuration",
            "demand",
            "capacity",
            "unit",
            "ratio",
            "limitRatio",
            "baseRatio",
            "source");
  }

  @Test
  void snow_is_what_lies_on_the_top_flat_snow_times_its_share() {
    double flat = amount(Question.FLAT_SNOW);
    double share = amount(Question.SNOW_SHARE);
    assertThat(json("everything-at-once").get("criteria").get("snowPsf").asDouble())
        .isEqualTo(flat * share, within(0.0005));
  }

  @Test
  void every_decision_carries_its_reasons_with_text_and_source() {
    SoftAssertions all = new SoftAssertions();
    for (JsonNode decision : json("everything-at-once").get("decisions")) {
      JsonNode reasons = decision.get("reasons");
      all.assertThat(reasons.get(0).get("governing").asBoolean()).isTrue();
      for (JsonNode reason : reasons) {
        all.assertThat(keys(reason))
            .containsExactly("rule", "text", "source", "governing", "because");
        all.assertThat(reason.get("text").asString()).isNotBlank();
        all.assertThat(keys(reason.get("source"))).containsExactly("kind", "citation");
      }
      for (JsonNode rejected : decision.get("rejected")) {
        boolean beyond = rejected.get("ratio").asDouble() >= 10;
        all.assertThat(keys(rejected))
            .containsExactlyElementsOf(
                beyond
                    ? List.of("option", "rule", "check", "ratio", "beyond", "text")
                    : List.of("option", "rule", "check", "ratio", "text"));
        all.assertThat(rejected.get("ratio").asDouble()).isGreaterThan(1);
      }
    }
    all.assertAll();
  }

  @Test
  void counts_are_whole_and_lengths_are_rounded_to_a_thousandth() {
    JsonNode bays = decision("everything-at-once", "layout", "bays");
    assertThat(bays.get("proposed").toString()).isEqualTo("9");
    assertThat(bays.get("base").toString()).isEqualTo("4");
    assertThat(JsonText.rounded(26.5992755)).isEqualTo(26.599);
    assertThat(decision("everything-at-once", "post", "size").get("proposed").asString())
        .isEqualTo("8x8");
  }

  @Test
  void the_structure_is_told_as_it_stands() {
    Structure structure = ((Result.Proposed) Demo.proposal("wisteria-court").result()).structure();
    JsonNode members = json("wisteria-court").get("members");
    assertThat(members.size()).isEqualTo(structure.members().size());
    assertThat(members.get(0).get("lengthIn").asDouble())
        .isEqualTo(structure.members().get(0).lengthIn(), within(0.0005));
    assertThat(members.get(2).get("notches").size())
        .isEqualTo(structure.members().get(2).notches().size());
  }

  @Test
  void a_site_outside_the_rules_says_what_breaks_it_and_how_close_it_came() {
    JsonNode root = json("too-much-snow");
    assertThat(root.get("status").asString()).isEqualTo("needs-engineer");
    assertThat(root.has("layout")).isFalse();
    assertThat(root.get("broken").get("demand").asString()).isEqualTo("site.climate.ground-snow");
    assertThat(root.get("broken").get("ratio").asDouble()).isEqualTo(95.0 / 70, within(0.0005));
    JsonNode beam = json("no header joint serves").get("broken");
    assertThat(beam.get("question").asString()).isEqualTo("joint.header");
    assertThat(beam.get("option").asString()).isEqualTo("header-paired-four");
  }

  @Test
  void a_line_holds_the_same_without_a_line_break() {
    String line = ProposalJson.whole(Demo.proposal("deep-frost"), Demo.words()).toString();
    assertThat(line).doesNotContain("\n");
    assertThat(JSON.readTree(line)).isEqualTo(json("deep-frost"));
  }

  @Test
  void an_explanation_carries_its_text_its_decisions_and_the_way_back() {
    JsonNode root =
        JSON.readTree(
            WhyJson.of(
                Demo.proposal("wisteria-court"),
                Demo.words(),
                Demo.words().subjects().find("posts"),
                Optional.empty(),
                Reader.ENGINEER));
    assertThat(keys(root))
        .containsExactly(
            "schema",
            "status",
            "title",
            "topic",
            "reader",
            "text",
            "decisions",
            "chain",
            "workings",
            "symbols");
    assertThat(root.get("workings").get(1).get("formula").asString()).startsWith("Kz = ");
    assertThat(root.get("workings").get(2).get("inputs").get(0).get("name").asString())
        .isEqualTo("speed");
    assertThat(root.get("workings").get(2).get("inputs").get(0).get("unit").asString())
        .isEqualTo("mph");
    assertThat(root.get("chain").get(0).get("text").asString()).startsWith("post.size = 8x8");
    assertThat(root.get("decisions").get(0).get("attribute").asString()).isEqualTo("size");
  }

  private static double amount(Question question) {
    return ((org.scantling.reasons.Outcome.Amount)
            Demo.decision("everything-at-once", question).proposed())
        .measure()
        .amount();
  }

  private static JsonNode decision(String name, String subject, String attribute) {
    for (JsonNode each : json(name).get("decisions")) {
      if (each.get("subject").asString().equals(subject)
          && each.get("attribute").asString().equals(attribute)) {
        return each;
      }
    }
    throw new IllegalArgumentException("no decision " + subject + "." + attribute);
  }

  private static JsonNode json(String name) {
    return JSON.readTree(ProposalJson.of(Demo.proposal(name), Demo.words()));
  }

  private static List<String> keys(JsonNode node) {
    return new ArrayList<>(node.propertyNames());
  }
}
