package org.scantling.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBase;

/**
 * Works the phases of one job through. Only facts that rules of the phase can match are laid before
 * them; a phase for which nothing has changed since the pass before is not worked through again.
 */
final class Sheets {
  private final RuleBase rules;
  private final Predicate<String> allowed;
  private final CommonRows rows;
  private final Job job;
  private final Map<Phase, List<Fact>> ofTheJob = new EnumMap<>(Phase.class);
  private final Map<Phase, Sheet> last = new EnumMap<>(Phase.class);

  /**
   * @param allowed the rules that may fire, by id
   * @param rows the table rows that any phase may read
   */
  Sheets(RuleBase rules, Predicate<String> allowed, CommonRows rows, Job job) {
    this.rules = rules;
    this.allowed = allowed;
    this.rows = rows;
    this.job = job;
  }

  /**
   * @param told facts of the pass itself: answers, dead ends, rules relied on
   * @param answers the same answers, for what is worked out from them
   */
  Sheet of(Phase phase, List<Fact> told, Answers answers) {
    List<Fact> read = rules.read(phase, told);
    Sheet before = last.get(phase);
    if (before != null && job.ledger().keepsPhases() && before.holds(read, answers)) {
      return before;
    }
    Set<Question> looked = EnumSet.noneOf(Question.class);
    Desk desk = new Desk(job, answers.watched(looked::add), phase);
    Sheet sheet = new Sheet(desk, read, answers, looked, fired(phase, read, desk));
    last.put(phase, sheet);
    return sheet;
  }

  /** What the cautions find where there is no structure to lay out. */
  List<Fired> ofAnyWork(List<Fact> facts) {
    List<Fact> all = new ArrayList<>(rows.of(Phase.CAUTIONS));
    all.addAll(rules.read(Phase.CAUTIONS, facts));
    return rules.run(Phase.CAUTIONS, all, allowed);
  }

  private List<Fired> fired(Phase phase, List<Fact> told, Desk desk) {
    List<Fact> facts = new ArrayList<>(rows.of(phase));
    facts.addAll(ofTheJob.computeIfAbsent(phase, each -> rules.read(each, job.facts())));
    facts.addAll(told);
    facts.addAll(rules.read(phase, desk.facts()));
    return job.ledger().findings(phase, facts, () -> rules.run(phase, facts, allowed));
  }
}
