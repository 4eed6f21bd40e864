package org.scantling.rulebase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;
import org.scantling.reasons.Fact;
import org.scantling.reasons.RuleNote;

/** One run of one phase: facts in, in the order given, findings out, nothing kept. */
final class RuleSession {
  private static final int MOST_FIRINGS = 20_000;

  private RuleSession() {}

  static List<Fired> run(
      KieBase base,
      Map<String, RuleNote> notes,
      List<? extends Fact> facts,
      Predicate<String> allowed) {
    FiringLog log = new FiringLog(notes);
    KieSession session = base.newKieSession();
    try {
      session.addEventListener(log.agenda());
      session.addEventListener(log.insertions());
      for (Fact fact : facts) {
        session.insert(fact);
      }
      int fired = session.fireAllRules(match -> allowed.test(idOf(match)), MOST_FIRINGS);
      if (fired >= MOST_FIRINGS) {
        throw new RuleBaseFault("rules loop; the last was '" + log.lastRule() + "'");
      }
      return log.findings();
    } finally {
      session.dispose();
    }
  }

  static String idOf(Match match) {
    return Objects.requireNonNull(match.getRule().getMetaData().get("id"))
        .toString()
        .replace("\"", "");
  }

  /** In an order that does not depend on who laid the facts out. */
  static List<? extends Fact> sorted(Collection<? extends Fact> facts) {
    List<Placed> placed = new ArrayList<>(facts.size());
    for (Fact fact : facts) {
      placed.add(new Placed(fact, fact.reference()));
    }
    placed.sort(Placed.ORDER);
    return placed.stream().map(Placed::fact).toList();
  }

  /** A fact with its reference, which some facts put together each time they are asked. */
  private record Placed(Fact fact, String reference) {
    static final Comparator<Placed> ORDER =
        Comparator.comparing(Placed::reference)
            .thenComparing(placed -> placed.fact().getClass().getName());
  }
}
