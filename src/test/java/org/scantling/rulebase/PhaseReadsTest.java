package org.scantling.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.forall;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Given;
import org.scantling.reasons.Phase;
import org.scantling.rulecases.CaseFacts;
import org.scantling.tables.Tables;

class PhaseReadsTest {
  private static final RuleBase RULES = RuleBase.load();
  private static final List<Fact> FACTS = facts();

  @ParameterizedTest
  @EnumSource(Phase.class)
  void what_no_rule_of_a_phase_reads_changes_none_of_its_findings(Phase phase) {
    List<Fact> read = RULES.read(phase, FACTS);

    assertThat(read).isNotEmpty().hasSizeLessThan(FACTS.size() / 2);
    assertThat(RULES.run(phase, read)).isNotEmpty().isEqualTo(RULES.run(phase, FACTS));
  }

  @ParameterizedTest
  @EnumSource(Phase.class)
  void every_fact_that_a_finding_rests_on_is_read(Phase phase) {
    Set<String> read = new LinkedHashSet<>();
    RULES.read(phase, FACTS).forEach(fact -> read.add(fact.reference()));

    for (Fired fired : RULES.run(phase, FACTS)) {
      assertThat(read).as(fired.rule()).containsAll(fired.because());
    }
  }

  @Test
  void a_row_is_read_only_in_the_phase_that_asks_for_it() {
    Fact row = Tables.load().thumb("bay.longest");

    assertThat(RULES.read(Phase.LAYOUT, List.of(row))).containsExactly(row);
    assertThat(RULES.read(Phase.FOOTINGS, List.of(row))).isEmpty();
  }

  @Test
  void a_fact_of_which_another_must_say_more_is_read() {
    PhaseReads reads = new PhaseReads(narrow());

    assertThat(reads.reads(new Given(Demand.WALK_LENGTH, 96))).isTrue();
    assertThat(reads.reads(new Given(Demand.SLOPE, 96))).isFalse();
  }

  @Test
  void a_condition_that_nobody_knows_how_to_read_is_a_fault() {
    assertThatThrownBy(() -> new PhaseReads(strange()))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage(
            "rule 'strange' has a condition of kind FORALL, of which nobody has said which facts it"
                + " reads");
  }

  private static ModelImpl narrow() {
    Variable<Given> one = declarationOf(Given.class);
    Variable<Given> other = declarationOf(Given.class);
    ModelImpl model = new ModelImpl();
    model.addRule(
        rule("org.scantling.tiny", "narrow")
            .build(
                pattern(one).expr(given -> given.demand() == Demand.WALK_LENGTH),
                pattern(other)
                    .expr(given -> given.demand() == Demand.WALK_LENGTH)
                    .expr(one, (given, first) -> given.number() > first.number()),
                on(one).execute(given -> {})));
    return model;
  }

  private static ModelImpl strange() {
    Variable<Given> given = declarationOf(Given.class);
    ModelImpl model = new ModelImpl();
    model.addRule(
        rule("org.scantling.tiny", "strange")
            .build(forall(pattern(given)), on(given).execute(fact -> {})));
    return model;
  }

  /** Those of all cases of all phases, and every row that is laid before the rules. */
  private static List<Fact> facts() {
    Tables tables = Tables.load();
    Set<Fact> facts = new LinkedHashSet<>();
    facts.addAll(tables.defaults().rows());
    facts.addAll(tables.thumbs().rows());
    facts.addAll(tables.checks().rows());
    facts.addAll(tables.cautions().rows());
    facts.addAll(tables.joints().rows());
    for (Phase phase : Phase.values()) {
      facts.addAll(CaseFacts.of(phase));
    }
    return new ArrayList<>(facts);
  }
}
