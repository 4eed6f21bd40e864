package org.scantling.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Given;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.RuleNote;
import org.scantling.reasons.Source;
import org.scantling.reasons.SourceKind;

/** A run of one rule made for the test, so that it can misbehave. */
class RuleSessionTest {
  private static final String ID = "tiny.rule";
  private static final RuleNote NOTE =
      new RuleNote(
          ID,
          Phase.LAYOUT,
          "bay/as long as the walk",
          new Source(SourceKind.CALCULATION, "geometry", false));
  private static final Given GIVEN = new Given(Demand.WALK_LENGTH, 96);

  @Test
  void a_finding_comes_with_its_rule_and_what_it_read() {
    assertThat(run(RuleSessionTest::found))
        .containsExactly(new Fired(finding(), NOTE, List.of("walkway.length")));
  }

  @Test
  void two_rules_that_find_the_same_are_two_findings() {
    ModelImpl model = new ModelImpl();
    model.addRule(tiny(ID, RuleSessionTest::found));
    model.addRule(tiny("tiny.other", RuleSessionTest::found));
    RuleNote other = new RuleNote("tiny.other", Phase.LAYOUT, "bay/as long", NOTE.source());

    List<Fired> fired =
        RuleSession.run(
            new PhaseRules(model).base(),
            Map.of(ID, NOTE, "tiny.other", other),
            facts(),
            id -> true);

    assertThat(fired).extracting(Fired::rule).containsExactly("tiny.other", ID);
    assertThat(fired).extracting(Fired::finding).containsExactly(finding(), finding());
  }

  @Test
  void rules_that_loop_are_stopped_and_named() {
    UnaryOperator<Object> another =
        given -> new Given(Demand.WALK_LENGTH, ((Given) given).number() + 1);

    assertThatThrownBy(() -> run(another))
        .isInstanceOf(RuleBaseFault.class)
        .hasMessage("rules loop; the last was 'bay/as long as the walk'");
  }

  @Test
  void a_rule_that_is_switched_off_finds_nothing() {
    assertThat(RuleSession.run(base(RuleSessionTest::found), notes(), facts(), id -> false))
        .isEmpty();
    assertThat(RuleSession.run(base(RuleSessionTest::found), notes(), facts(), ID::equals))
        .hasSize(1);
  }

  private static Object found(Object given) {
    return finding();
  }

  private static Finding finding() {
    return Finding.prefer(Question.BAY, 96, Evidence.none());
  }

  private static List<Fired> run(UnaryOperator<Object> inserts) {
    return RuleSession.run(base(inserts), notes(), facts(), id -> true);
  }

  private static Map<String, RuleNote> notes() {
    return Map.of(ID, NOTE);
  }

  private static List<Given> facts() {
    return List.of(GIVEN);
  }

  private static KieBase base(UnaryOperator<Object> inserts) {
    ModelImpl model = new ModelImpl();
    model.addRule(tiny(ID, inserts));
    return new PhaseRules(model).base();
  }

  private static Rule tiny(String id, UnaryOperator<Object> inserts) {
    Variable<Given> given = declarationOf(Given.class);
    return rule("org.scantling.tiny", id.equals(ID) ? NOTE.name() : id)
        .metadata("id", id)
        .build(
            pattern(given),
            on(given).execute((drools, fact) -> drools.insert(inserts.apply(fact))));
  }
}
