package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.BaseChoice;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.TriedBase;
import org.scantling.rulebase.RuleBase;
import org.scantling.rulebase.RuleBaseFault;
import org.scantling.tables.HouseTables;
import org.scantling.tables.Tables;

/** Which of several bases is taken for a whole site, and what tells against the others. */
class BaseChoiceTest {
  private static final Path SITE = Path.of("scenarios", "orchard-gap.yaml");
  private static final Tables TABLES = Tables.load();
  private static final RuleBase RULES = RuleBase.load();

  private static BaseChoice choice(String... wishes) {
    return choice(TABLES, wishes);
  }

  private static BaseChoice choice(Tables tables, String... wishes) {
    return new Engine(RULES, tables).choose(named(wishes));
  }

  private static List<NamedBase> named(String... wishes) {
    List<Setting> settings = Stream.of(wishes).map(Setting::parse).toList();
    return new SiteReader(Vocabulary.of(TABLES))
        .readEach(SITE, settings).stream()
            .map(each -> new NamedBase(each.baseFile(), each.site(), each.defaulted()))
            .toList();
  }

  /** What told against each that was not taken. */
  private static Map<String, String> against(BaseChoice choice) {
    return choice.others().stream()
        .collect(
            Collectors.toMap(TriedBase::name, each -> each.reason().orElseThrow().note().id()));
  }

  private static double count(BaseChoice choice, String base, String what) {
    return choice.tried().stream()
        .filter(each -> each.name().equals(base))
        .flatMap(each -> each.counts().stream())
        .filter(each -> each.what().equals(what))
        .mapToDouble(each -> each.measure().amount())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_base_of_which_least_changes_is_taken_and_a_drawing_gives_way_to_one_that_stands() {
    BaseChoice choice = choice();

    assertThat(choice.taken().name()).isEqualTo("Hop walk");
    assertThat(choice.place()).isEqualTo(2);
    assertThat(against(choice))
        .isEqualTo(
            Map.of(
                "Rose gate", "base.choice.stands",
                "Vineyard porch as drawn", "base.choice.unproven"));
    assertThat(choice.decision().proposed()).isEqualTo(new Outcome.Word("Hop walk"));
    // The porch came nearer than the gate, so what told against it is why it is the walk.
    assertThat(choice.decision().governing().note().id()).isEqualTo("base.choice.unproven");
    assertThat(choice.decision().rejected()).hasSize(2);
  }

  @Test
  void a_base_that_leads_to_nothing_gives_way_whatever_else_it_keeps() {
    BaseChoice choice =
        choice(
            "base=[base/kiwi-court.yaml,base/hop-walk.yaml]",
            "site.climate.wind-speed=138 mph",
            "site.climate.exposure=D",
            "site.soil=clay",
            "walkway.clear-width=9 ft");

    assertThat(choice.taken().name()).isEqualTo("Hop walk");
    assertThat(against(choice)).isEqualTo(Map.of("Kiwi court", "base.choice.refused"));
  }

  @Test
  void where_all_lead_to_nothing_the_nearest_is_told_and_equals_in_their_order() {
    assertThat(against(choice("site.climate.ground-snow=100 psf")))
        .isEqualTo(
            Map.of(
                "Vineyard porch as drawn", "base.choice.named",
                "Hop walk", "base.choice.named"));

    BaseChoice windy =
        choice(
            "base=[base/hop-walk.yaml,base/rose-gate.yaml]",
            "site.climate.wind-speed=138 mph",
            "site.climate.exposure=C",
            "walkway.clear-width=14 ft",
            "site.climate.ground-snow=65 psf",
            "planting[0].vine=wisteria");
    assertThat(windy.taken().name()).isEqualTo("Rose gate");
    assertThat(against(windy)).isEqualTo(Map.of("Hop walk", "base.choice.over"));
  }

  @Test
  void two_bases_of_one_title_are_told_apart_by_their_files(@TempDir Path folder)
      throws IOException {
    Path twin = folder.resolve("twin.yaml");
    Files.copy(Path.of("scenarios", "base", "hop-walk.yaml"), twin);

    BaseChoice choice = choice("base=[base/hop-walk.yaml," + twin + "]");

    assertThat(choice.taken().name()).isEqualTo("Hop walk (base/hop-walk.yaml)");
    assertThat(against(choice)).isEqualTo(Map.of("Hop walk (" + twin + ")", "base.choice.named"));
  }

  @Test
  void lengths_count_in_whole_steps_which_a_house_may_set(@TempDir Path house) throws IOException {
    // The bays of the walk shrink from 90 in to 72 in: 18 in; the gate grows wider by 6 to 8 in.
    assertThat(count(choice(), "Hop walk", "rhythm")).isEqualTo(18);
    assertThat(count(choice(), "Rose gate", "room")).isEqualTo(6);

    Files.writeString(house.resolve("base-changes.csv"), "id,step_in\nrhythm,10\nroom,12\n");
    BaseChoice coarser = choice(HouseTables.load(house));
    assertThat(count(coarser, "Hop walk", "rhythm")).isEqualTo(10);
    assertThat(count(coarser, "Rose gate", "room")).isZero();
  }

  @Test
  void a_rule_base_that_tells_nothing_apart_is_a_fault() {
    Engine silent = new Engine(RULES, TABLES, id -> !id.startsWith("base.choice."));

    assertThatThrownBy(() -> silent.choose(named()))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage("3 of 3 bases give way to none");
  }
}
