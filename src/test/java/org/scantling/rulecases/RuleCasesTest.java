package org.scantling.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.scantling.rulebase.RuleBase;
import org.scantling.tables.Tables;

/** Walks every case beside every rule. */
class RuleCasesTest {
  private final RuleBase base = RuleBase.load();
  private final TableCells cells = new TableCells(Tables.load());

  @TestFactory
  Stream<DynamicContainer> the_rules_find_exactly_what_their_cases_say() {
    return DrlFile.all().stream()
        .map(
            rules ->
                DynamicContainer.dynamicContainer(
                    rules.place(), CaseFile.beside(rules, cells).stream().map(this::test)));
  }

  private DynamicTest test(RuleCase one) {
    return DynamicTest.dynamicTest(
        one.sentence(),
        () -> {
          List<Found> found = one.found(base, one.facts(cells, number -> number));
          assertThat(found).as(one.where()).isEqualTo(one.finds());
        });
  }
}
