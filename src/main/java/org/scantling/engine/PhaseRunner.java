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
import org.scantling.answers.Answers;
import org.scantling.facts.CommonRows;
import org.scantling.facts.PhaseFacts;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.Detail;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBase;

/**
 * Works the phases of one problem through. Only facts that rules of the phase can match are laid
 * before them; a phase for which nothing has changed since a pass before is not worked through
 * again.
 */
final class PhaseRunner {
  /** Passes swing between few states, and a new start goes through those of the first again. */
  private static final int MOST_OF_A_PHASE = 6;

  private final RuleBase rules;
  private final Predicate<String> allowed;
  private final CommonRows rows;
  private final DesignProblem problem;
  private final Detail detail;
  private final Map<Phase, List<Fact>> ofTheProblem = new EnumMap<>(Phase.class);
  private final Map<Phase, Deque<PhaseRun>> kept = new EnumMap<>(Phase.class);

  /**
   * @param allowed the rules that may fire, by id
   * @param rows the table rows that any phase may read
   * @param detail how much of what the rules find somebody reads
   */
  PhaseRunner(
      RuleBase rules,
      Predicate<String> allowed,
      CommonRows rows,
      DesignProblem problem,
      Detail detail) {
    this.rules = rules;
    this.allowed = allowed;
    this.rows = rows;
    this.problem = problem;
    this.detail = detail;
  }

  /**
   * @param told facts of the pass itself: answers, dead ends, rules relied on
   * @param answers the same answers, for what is worked out from them
   * @param floors sizes below which the answers will not go
   */
  PhaseRun of(Phase phase, List<Fact> told, Answers answers, Map<Question, String> floors) {
    List<Fact> read = rules.read(phase, told);
    Deque<PhaseRun> before = kept.computeIfAbsent(phase, each -> new ArrayDeque<>());
    for (PhaseRun phaseRun : before) {
      if (problem.cache().keepsPhases() && phaseRun.holds(read, answers, floors)) {
        return phaseRun;
      }
    }
    PhaseRun phaseRun = work(phase, read, answers, floors);
    before.addFirst(phaseRun);
    if (before.size() > MOST_OF_A_PHASE) {
      before.removeLast();
    }
    return phaseRun;
  }

  private PhaseRun work(
      Phase phase, List<Fact> read, Answers answers, Map<Question, String> floors) {
    PhaseRun phaseRun = work(phase, read, answers, floors, detail);
    return phaseRun.phaseFacts().leftOut().missed(phaseRun.fired())
        ? work(phase, read, answers, floors, Detail.FULL)
        : phaseRun;
  }

  private PhaseRun work(
      Phase phase, List<Fact> read, Answers answers, Map<Question, String> floors, Detail detail) {
    Set<Question> looked = EnumSet.noneOf(Question.class);
    PhaseFacts phaseFacts =
        new PhaseFacts(problem, answers.watched(looked::add), phase, floors, detail);
    List<Fired> fired = fired(phase, read, phaseFacts);
    while (phaseFacts.worksWhatIsTold(fired)) {
      fired = fired(phase, read, phaseFacts);
    }
    return new PhaseRun(phaseFacts, read, answers, floors, looked, fired);
  }

  /** What the cautions find where there is no structure to lay out. */
  List<Fired> ofAnyWork(List<Fact> facts) {
    List<Fact> all = new ArrayList<>(rows.of(Phase.CAUTIONS));
    all.addAll(rules.read(Phase.CAUTIONS, facts));
    return rules.run(Phase.CAUTIONS, all, allowed);
  }

  private List<Fired> fired(Phase phase, List<Fact> told, PhaseFacts phaseFacts) {
    List<Fact> facts = new ArrayList<>(rows.of(phase));
    facts.addAll(ofTheProblem.computeIfAbsent(phase, each -> rules.read(each, problem.facts())));
    facts.addAll(told);
    facts.addAll(rules.read(phase, phaseFacts.facts()));
    return problem.cache().findings(phase, facts, () -> rules.run(phase, facts, allowed));
  }
}
