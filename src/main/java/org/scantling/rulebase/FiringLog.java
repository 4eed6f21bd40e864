package org.scantling.rulebase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.kie.api.event.rule.AgendaEventListener;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.rule.Match;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.RuleNote;

/**
 * Pairs each finding with the firing that made it, so that what a reason says was read is what was
 * read, and audits that a finding carries the id of its own rule.
 */
final class FiringLog {
  private final Map<String, RuleNote> notes;
  private final List<Fired> fired = new ArrayList<>();
  private Match current;

  FiringLog(Map<String, RuleNote> notes) {
    this.notes = notes;
  }

  AgendaEventListener agenda() {
    return new DefaultAgendaEventListener() {
      @Override
      public void beforeMatchFired(BeforeMatchFiredEvent event) {
        current = event.getMatch();
      }
    };
  }

  RuleRuntimeEventListener insertions() {
    return new DefaultRuleRuntimeEventListener() {
      @Override
      public void objectInserted(ObjectInsertedEvent event) {
        if (event.getObject() instanceof Finding finding) {
          record(finding);
        }
      }
    };
  }

  /** By rule, and those of one rule by what they say: an order that no agenda changes. */
  List<Fired> findings() {
    SortedMap<String, List<Fired>> byRule = new TreeMap<>();
    for (Fired each : fired) {
      byRule.computeIfAbsent(each.finding().rule(), rule -> new ArrayList<>()).add(each);
    }
    List<Fired> sorted = new ArrayList<>(fired.size());
    for (List<Fired> ofOneRule : byRule.values()) {
      sorted.addAll(ofOneRule.size() == 1 ? ofOneRule : byText(ofOneRule));
    }
    return List.copyOf(sorted);
  }

  /** Each finding is written out once, because that is slow. */
  private static List<Fired> byText(List<Fired> findings) {
    record Written(Fired fired, String text) {}
    return findings.stream()
        .map(each -> new Written(each, each.finding().toString()))
        .sorted(Comparator.comparing(Written::text))
        .map(Written::fired)
        .toList();
  }

  String lastRule() {
    return current == null ? "none" : current.getRule().getName();
  }

  private void record(Finding finding) {
    String id = RuleSession.idOf(current);
    if (!id.equals(finding.rule())) {
      throw new RuleBaseFault("rule " + id + " signed a finding as " + finding.rule());
    }
    List<String> because =
        current.getObjects().stream()
            .filter(Fact.class::isInstance)
            .map(object -> ((Fact) object).reference())
            .distinct()
            .sorted()
            .toList();
    fired.add(new Fired(finding, notes.get(id), because));
  }
}
