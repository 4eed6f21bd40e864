package org.scantling.rulebase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Given;
import org.scantling.reasons.Phase;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.SourceKind;

/** The rules as they were compiled. */
class RuleBaseTest {
  private final RuleBase rules = RuleBase.load();

  @Test
  void every_rule_knows_its_phase_its_words_and_what_stands_behind_it() {
    RuleNote note = rules.notes().get("climate.snow.stated");

    assertThat(note.phase()).isEqualTo(Phase.CLIMATE);
    assertThat(note.name()).isEqualTo("ground snow/the stated value is taken as given");
    assertThat(note.source().kind()).isEqualTo(SourceKind.STANDARD);
    assertThat(note.source().citation()).isEqualTo("ASCE 7-16, 7.2");
  }

  @Test
  void every_phase_has_rules_that_are_called_by_its_folder() {
    assertThat(rules.notes().values().stream().map(RuleNote::phase).distinct())
        .containsExactlyInAnyOrder(Phase.values());
    assertThat(rules.notes().values())
        .allSatisfy(note -> assertThat(note.id()).startsWith(note.phase().folder() + "."));
  }

  @Test
  void a_phase_without_facts_finds_nothing_that_no_fact_stands_behind() {
    for (Phase phase : Phase.values()) {
      assertThat(rules.run(phase, List.of())).as(phase.folder()).isEmpty();
    }
  }

  @Test
  void nothing_is_kept_from_one_run_to_the_next() {
    List<Given> facts = List.of(new Given(Demand.GROUND_SNOW, 25));

    assertThat(rules.run(Phase.CLIMATE, facts)).hasSize(1);
    assertThat(rules.run(Phase.CLIMATE, facts)).hasSize(1);
    assertThat(rules.run(Phase.CLIMATE, List.of())).isEmpty();
  }
}
