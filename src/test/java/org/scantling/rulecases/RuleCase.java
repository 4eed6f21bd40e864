package org.scantling.rulecases;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.scantling.reasons.Fact;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBase;
import tools.jackson.databind.JsonNode;

/**
 * Facts in, findings out.
 *
 * @param rules the file whose rules count, and no others
 * @param sentence what the case shows
 * @param facts as written
 * @param finds what exactly must be found, sorted
 */
record RuleCase(DrlFile rules, String sentence, List<JsonNode> facts, List<Found> finds) {

  RuleCase {
    facts = List.copyOf(facts);
    finds = finds.stream().sorted().toList();
  }

  String where() {
    return rules.place() + ", " + sentence;
  }

  List<Fact> facts(TableCells cells, DoubleUnaryOperator nudge) {
    FactReader reader = new FactReader(cells, nudge);
    List<Fact> read = new ArrayList<>();
    facts.forEach(node -> read.add(reader.read(where(), node)));
    return read;
  }

  List<Fired> run(RuleBase base, List<Fact> given) {
    return base.run(rules.phase(), given, rules.ids()::contains);
  }

  List<Found> found(RuleBase base, List<Fact> given) {
    return run(base, given).stream().map(Found::of).sorted().toList();
  }

  boolean fires(String rule) {
    return finds.stream().anyMatch(each -> each.rule().equals(rule));
  }
}
