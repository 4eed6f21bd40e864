package org.scantling.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scantling.print.RulesJson;
import org.scantling.rulebase.RuleBase;
import org.scantling.rulebook.Agreement;
import org.scantling.rulebook.Grid;
import org.scantling.rulebook.Rulebook;
import org.scantling.words.Words;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The rule base in words, from the command line. */
class RulesCommandTest {
  @Test
  void the_rule_base_is_complete_and_consistent() {
    Run run = Run.of("rules", "--lint").endedWith(ExitStatus.ANSWERED);
    assertThat(run.out()).contains("Complete and consistent.");
    JsonNode report = json("rules", "--lint", "--format", "json");
    assertThat(report.get("status").asString()).isEqualTo("clean");
    assertThat(report.get("complaints")).isEmpty();
    assertThat(report.get("proofs"))
        .hasSizeGreaterThan(6)
        .allSatisfy(proof -> assertThat(proof.get("count").asInt()).isPositive());
  }

  @Test
  void bounds_that_a_house_lets_cross_are_told_and_the_status_says_so(@TempDir Path house)
      throws IOException {
    Files.writeString(house.resolve("thumb.csv"), "id,value\nfooting.deepest,24\n");
    Run run =
        Run.of("rules", "--lint", "--house-rules", house.toString())
            .endedWith(ExitStatus.WRONG_INPUT);
    assertThat(run.out())
        .contains("Not in order", "footing.depth: footings.depth.least asks for at least 30");
  }

  @Test
  void every_rule_of_the_rule_base_is_listed() {
    String text = Run.of("rules").endedWith(ExitStatus.ANSWERED).out();
    assertThat(text).contains(RuleBase.load().notes().keySet());
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"posts.size.tall", "climate.frost.zone", "headers.size.check"})
  void one_rule_is_told_in_full(String id) {
    String text = Run.of("rules", id).endedWith(ExitStatus.ANSWERED).out();
    Golden.compare("rules-" + id + ".txt", text);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void the_rules_about_one_thing_are_told_together() {
    Golden.compare("rules-footings.txt", Run.of("rules", "footings").endedWith(0).out());
    Golden.compare(
        "rules-footings.md",
        Run.of("rules", "footings", "--format", "markdown").endedWith(0).out());
  }

  @Test
  void programs_get_every_rule_with_its_rows_and_their_sources() {
    JsonNode rules = json("rules", "--format", "json").get("rules");
    assertThat(rules).hasSize(RuleBase.load().notes().size());
    for (JsonNode rule : rules) {
      String id = rule.get("id").asString();
      assertThat(rule.get("outcome").asString()).as(id).isNotBlank();
      assertThat(rule.get("source").get("citation").asString()).as(id).isNotBlank();
      assertThat(rule.get("reads")).as(id).isNotEmpty();
      assertThat(rule.get("cases")).as(id).isNotEmpty();
      assertThat(rule.get("words")).as(id).hasSize(3);
      assertThat(rule.get("finds").asString()).as(id).isNotEqualTo("none");
      rule.get("rows")
          .forEach(row -> assertThat(row.get("status").asString()).isIn("seen", "memory", "none"));
    }
  }

  @Test
  void a_house_rule_shows_in_the_rule_that_reads_it(@TempDir Path house) throws IOException {
    Files.writeString(house.resolve("thumb.csv"), "id,value\npost.height-4x4,84\n");
    assertThat(
            Run.of("rules", "posts.size.tall", "--house-rules", house.toString())
                .endedWith(ExitStatus.ANSWERED)
                .out())
        .contains("7'-0\"", "house rule");
  }

  @Test
  void a_mistyped_rule_is_told_with_the_near_one() {
    assertThat(Run.of("rules", "posts.size.tal").endedWith(ExitStatus.WRONG_INPUT).err())
        .contains("Maybe posts.size.tall?");
    assertThat(Run.of("rules", "roof").endedWith(ExitStatus.WRONG_INPUT).err())
        .contains("is nothing that is decided");
  }

  @Tag("slow")
  @Test
  void thumb_and_calculation_are_counted_on_every_site() {
    JsonNode found = json("rules", "--agreement", "--format", "json");
    counted(found, 200);
    for (JsonNode rule : found.get("rules")) {
      JsonNode alone = rule.get("alone");
      assertThat(alone.get("reason").asString()).as(rule.get("rule").asString()).isNotBlank();
      assertThat(alone.get("notEnough").asInt()).as(rule.get("rule").asString()).isZero();
      boolean never = alone.get("never").asBoolean();
      assertThat(alone.get("sites").asInt() == 0).as("%s", rule.get("rule")).isEqualTo(never);
    }
  }

  /** The mildest and the hardest of each demand, two and thirty sites. */
  @Test
  void thumb_and_calculation_are_counted_at_the_ends_of_the_grid() {
    Workplace workplace = Workplace.of(Optional.empty());
    Rulebook book =
        Rulebook.read(CompiledRules.notes(), workplace.tables(), Words.load(workplace.tables()));
    List<Grid.Axis> ends =
        Grid.axes().stream()
            .map(
                axis ->
                    new Grid.Axis(
                        axis.path(),
                        List.of(axis.values().get(0), axis.values().get(axis.values().size() - 1))))
            .toList();
    Agreement found = new ThumbGrid(workplace, book, ends).over(Optional.empty());
    counted(new JsonMapper().readTree(RulesJson.of(found)), 20);
  }

  private static void counted(JsonNode found, int most) {
    int tried = found.get("sites").asInt() - found.get("withoutStructure").asInt();
    assertThat(tried).isGreaterThan(most);
    assertThat(found.get("rules")).hasSizeGreaterThan(8);
    for (JsonNode rule : found.get("rules")) {
      int counted =
          rule.get("safer").asInt() + rule.get("equal").asInt() + rule.get("notEnough").asInt();
      assertThat(counted).as(rule.get("rule").asString()).isEqualTo(tried);
      assertThat(rule.get("places")).hasSize(tried);
    }
    assertThat(rule(found, "footings.hole.widths").get("notEnough").asInt()).isZero();
    JsonNode least = rule(found, "footings.depth.least");
    assertThat(least.get("notEnough").asInt()).isPositive();
    assertThat(least.get("places"))
        .allSatisfy(place -> assertThat(place.get("thumb").asString()).isEqualTo("2'-6\""));
  }

  @Test
  void the_grid_may_be_laid_over_a_site_file_that_must_be_there() {
    assertThat(
            Run.of("rules", "--agreement", "nowhere.yaml").endedWith(ExitStatus.WRONG_INPUT).err())
        .startsWith("nowhere.yaml:");
  }

  private static JsonNode rule(JsonNode found, String id) {
    for (JsonNode rule : found.get("rules")) {
      if (rule.get("rule").asString().equals(id)) {
        return rule;
      }
    }
    throw new AssertionError(id + " was not tried");
  }

  private static JsonNode json(String... words) {
    return new JsonMapper().readTree(Run.of(words).endedWith(ExitStatus.ANSWERED).out());
  }
}
