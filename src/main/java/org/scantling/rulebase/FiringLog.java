package org.scantling.rulebase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
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
 * read, and by the rule that read it.
 */
final class FiringLog {
  private final Map<String, RuleNote> notes;
  private final List<Fired> fired = new ArrayList<>();
  private @Nullable Match current;

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

  /** In an order that no agenda changes: by rule, then by what they say and what they read. */
  List<Fired> findings() {
    return fired.stream().sorted(FiringLog::inOrder).toList();
  }

  private static int inOrder(Fired one, Fired other) {
    int byRule = one.rule().compareTo(other.rule());
    if (byRule != 0) {
      return byRule;
    }
    int byKey = key(one.finding()).compareTo(key(other.finding()));
    // To write a whole finding out is slow, and seldom needed to tell two apart.
    int bySaid =
        byKey != 0 ? byKey : one.finding().toString().compareTo(other.finding().toString());
    return bySaid != 0 ? bySaid : one.because().toString().compareTo(other.because().toString());
  }

  private static String key(Finding finding) {
    if (finding instanceof Finding.Reject reject) {
      return String.join(" ", reject.question().name(), reject.option(), reject.check());
    }
    return finding instanceof Finding.Judgement judgement ? judgement.question().name() : "";
  }

  private RuleNote note(Match match) {
    String id = RuleSession.idOf(match);
    return Objects.requireNonNull(notes.get(id), id);
  }

  String lastRule() {
    return current == null ? "none" : current.getRule().getName();
  }

  private void record(Finding finding) {
    Match match = Objects.requireNonNull(current, "found outside a rule");
    List<String> because =
        match.getObjects().stream()
            .filter(Fact.class::isInstance)
            .map(object -> ((Fact) object).reference())
            .distinct()
            .sorted()
            .toList();
    fired.add(new Fired(finding, note(match), because));
  }
}
