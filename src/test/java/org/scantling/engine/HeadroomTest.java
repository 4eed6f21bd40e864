package org.scantling.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.intake.Intake;
import org.scantling.intake.Setting;
import org.scantling.intake.SiteReader;
import org.scantling.intake.Vocabulary;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** What hangs down takes none of the height that somebody needs, whoever it is. */
class HeadroomTest {
  private static final Tables TABLES = Tables.load();
  private static final Engine ENGINE = new Engine(RuleBase.load(), TABLES);

  private static Decision headroom(String vine) {
    Intake intake =
        new SiteReader(Vocabulary.of(TABLES))
            .read(
                Path.of("src/test/resources/rulecases/sites/mower-under-flowers.yaml"),
                List.of(new Setting("planting", "[{vine: " + vine + "}]")));
    return ENGINE
        .propose(intake.site(), intake.defaulted())
        .decision(Question.HEADROOM)
        .orElseThrow();
  }

  private static double inches(Decision decision) {
    return ((Outcome.Amount) decision.proposed()).measure().amount();
  }

  @Test
  void a_mower_of_seven_feet_has_them_below_the_flowers() {
    Decision wisteria = headroom("wisteria");
    double hangingIn = TABLES.vine("wisteria").hangingIn();
    assertThat(hangingIn).isPositive();
    assertThat(inches(wisteria)).isGreaterThanOrEqualTo(84 + hangingIn);
    assertThat(wisteria.governing().note().id()).isEqualTo("clearance.headroom.user-hanging");
  }

  @Test
  void the_height_is_told_with_its_own_source_and_not_with_that_of_the_width() {
    TABLES.users().rows().stream()
        .filter(user -> !user.source().equals(user.headroomSource()))
        .forEach(
            user ->
                assertThat(user.height().source())
                    .isEqualTo(user.headroomSource())
                    .isNotEqualTo(user.source()));
    assertThat(headroom("wisteria").reasons())
        .filteredOn(each -> each.note().id().equals("clearance.headroom.user-hanging"))
        .allMatch(
            each -> each.source().equals(TABLES.users().row("ride-on-mower").headroomSource()))
        .isNotEmpty();
  }

  @Test
  void with_nothing_planted_nothing_hangs_down() {
    assertThat(headroom("none").reasons())
        .extracting(each -> each.note().id())
        .contains("clearance.headroom.user", "clearance.headroom.least")
        .doesNotContain("clearance.headroom.user-hanging", "clearance.headroom.hanging");
  }
}
