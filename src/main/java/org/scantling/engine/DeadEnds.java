package org.scantling.engine;

import static org.scantling.reasons.Question.BAYS;

import java.util.List;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.rulebase.RuleBaseFault;

/** What led nowhere, among the facts that a settling is told. */
final class DeadEnds {
  private DeadEnds() {}

  /** Where a pass broke, told of its answer to an earlier question. */
  static DeadEnd of(Question question, Pass pass) {
    Resolution.Unanswerable broken = pass.broken().orElseThrow();
    Finding closest = broken.closest().finding();
    String check =
        closest instanceof Finding.Reject reject ? reject.check() : broken.closest().note().id();
    double ratio = closest instanceof Finding.Reject reject ? reject.ratio() : 1;
    return new DeadEnd(
        question, pass.answers().option(question), broken.asked().id(), check, ratio);
  }

  /**
   * @throws RuleBaseFault if it is among them, since then it would be tried for ever
   */
  static void add(DeadEnd end, List<Fact> tried) {
    if (tried.contains(end)) {
      throw new RuleBaseFault("no rule stops " + end.reference() + " from being tried again");
    }
    tried.add(end);
  }

  /** The numbers of bays among them. */
  static List<DeadEnd> ofBays(List<Fact> tried) {
    return ofKind(DeadEnd.class, tried).stream().filter(end -> end.question() == BAYS).toList();
  }

  static <T> List<T> ofKind(Class<T> kind, List<Fact> facts) {
    return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
