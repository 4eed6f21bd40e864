package org.scantling.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
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
 * them; a phase for which nothing has changed since a pass before is not worked through again.
 */
final class Sheets {
  /** Passes swing between few states, and a new start goes through those of the first again. */
  private static final int MOST_OF_A_PHASE = 6;

  private final RuleBase rules;
  private final Predicate<String> allowed;
  private final CommonRows rows;
  private final Job job;
  private final Telling telling;
  private final Map<Phase, List<Fact>> ofTheJob = new EnumMap<>(Phase.class);
  private final Map<Phase, Deque<Sheet>> kept = new EnumMap<>(Phase.class);

  /**
   * @param allowed the rules that may fire, by id
   * @param rows the table rows that any phase may read
   * @param telling how much of what the rules find somebody reads
   */
  Sheets(RuleBase rules, Predicate<String> allowed, CommonRows rows, Job job, Telling telling) {
    this.rules = rules;
    this.allowed = allowed;
    this.rows = rows;
    this.job = job;
    this.telling = telling;
  }

  /**
   * @param told facts of the pass itself: answers, dead ends, rules relied on
   * @param answers the same answers, for what is worked out from them
   */
  Sheet of(Phase phase, List<Fact> told, Answers answers) {
    List<Fact> read = rules.read(phase, told);
    Deque<Sheet> before = kept.computeIfAbsent(phase, each -> new ArrayDeque<>());
    for (Sheet sheet : before) {
      if (job.ledger().keepsPhases() && sheet.holds(read, answers)) {
        return sheet;
      }
    }
    Sheet sheet = work(phase, read, answers);
    before.addFirst(sheet);
    if (before.size() > MOST_OF_A_PHASE) {
      before.removeLast();
    }
    return sheet;
  }

  private Sheet work(Phase phase, List<Fact> read, Answers answers) {
    Sheet sheet = work(phase, read, answers, telling);
    return sheet.desk().leftOut().missed(sheet.fired())
        ? work(phase, read, answers, Telling.WHOLE)
        : sheet;
  }

  private Sheet work(Phase phase, List<Fact> read, Answers answers, Telling telling) {
    Set<Question> looked = EnumSet.noneOf(Question.class);
    Desk desk = new Desk(job, answers.watched(looked::add), phase, telling);
    return new Sheet(desk, read, answers, looked, fired(phase, read, desk));
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
