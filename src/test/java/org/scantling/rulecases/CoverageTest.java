package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/**
 * Says which cases are missing. Nobody has to mark a case: what it shows follows from its facts.
 */
class CoverageTest {
  private final Coverage coverage = new Coverage(RuleBase.load(), new TableCells(Tables.load()));

  @Test
  void every_rule_has_a_case_in_which_it_fires() {
    assertThat(missing("no case in which it fires", coverage::fires)).isEmpty();
  }

  @Test
  void every_rule_has_a_silent_case_that_is_one_fact_away_from_a_firing_one() {
    assertThat(missing("no case in which one other fact keeps it silent", coverage::silentNearby))
        .isEmpty();
  }

  @Test
  void every_rule_that_compares_numbers_has_a_case_right_at_its_boundary() {
    assertThat(
            missing(
                "no case so near its boundary that a millionth more or less turns it",
                rule -> !rule.compares() || coverage.atBoundary(rule)))
        .isEmpty();
  }

  @Test
  void the_rules_in_the_files_are_the_rules_of_the_rule_base() {
    List<String> written = new ArrayList<>();
    DrlFile.all().forEach(file -> written.addAll(file.ids()));

    assertThat(written).containsExactlyInAnyOrderElementsOf(RuleBase.load().notes().keySet());
  }

  private List<String> missing(String what, java.util.function.Predicate<RuleText> has) {
    List<String> missing = new ArrayList<>();
    for (DrlFile file : DrlFile.all()) {
      file.rules().stream()
          .filter(rule -> !has.test(rule))
          .forEach(rule -> missing.add(file.place() + ": " + rule.id() + " has " + what));
    }
    return missing;
  }
}
