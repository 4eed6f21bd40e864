package org.scantling.rulecases;

import java.util.ArrayList;
import java.util.List;
import org.scantling.rulebase.RuleBase;
import tools.jackson.databind.JsonNode;

/** What the cases of a rule show, worked out from their facts. */
final class Coverage {
  private static final double A_LITTLE = 1e-6;

  private final RuleBase base;
  private final TableCells cells;
  private final List<RuleCase> cases;

  Coverage(RuleBase base, TableCells cells) {
    this.base = base;
    this.cells = cells;
    this.cases = CaseFile.all(cells);
  }

  boolean fires(RuleText rule) {
    return cases.stream().anyMatch(one -> one.fires(rule.id()));
  }

  /** True when some silent case is some firing case with one fact added, left out or changed. */
  boolean silentNearby(RuleText rule) {
    return of(rule).stream()
        .filter(one -> one.fires(rule.id()))
        .anyMatch(
            firing ->
                of(rule).stream()
                    .filter(one -> !one.fires(rule.id()))
                    .anyMatch(silent -> oneFactApart(firing, silent)));
  }

  /** True when some case turns as soon as one of its numbers moves by a millionth. */
  boolean atBoundary(RuleText rule) {
    return of(rule).stream().anyMatch(one -> turns(one, rule.id()));
  }

  private List<RuleCase> of(RuleText rule) {
    return cases.stream().filter(one -> one.rules().ids().contains(rule.id())).toList();
  }

  private static boolean oneFactApart(RuleCase one, RuleCase other) {
    return extra(one, other).size() <= 1 && extra(other, one).size() <= 1;
  }

  private static List<JsonNode> extra(RuleCase one, RuleCase other) {
    List<JsonNode> extra = new ArrayList<>(one.facts());
    other.facts().forEach(extra::remove);
    return extra;
  }

  private boolean turns(RuleCase one, String rule) {
    int numbers = count(one);
    List<String> before = findings(one, rule, new Nudge(-1, 1));
    for (int place = 0; place < numbers; place++) {
      boolean less = !findings(one, rule, new Nudge(place, 1 - A_LITTLE)).equals(before);
      boolean more = !findings(one, rule, new Nudge(place, 1 + A_LITTLE)).equals(before);
      if (less != more) {
        return true;
      }
    }
    return false;
  }

  private int count(RuleCase one) {
    Nudge none = new Nudge(-1, 1);
    one.facts(cells, none);
    return none.seen();
  }

  private List<String> findings(RuleCase one, String rule, Nudge nudge) {
    return one.found(base, one.facts(cells, nudge)).stream()
        .filter(each -> each.rule().equals(rule))
        .map(Found::withoutNumbers)
        .toList();
  }
}
