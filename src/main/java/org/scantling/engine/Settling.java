package org.scantling.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import org.scantling.answers.Answers;
import org.scantling.facts.CommonRows;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.Detail;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Question;
import org.scantling.rulebase.RuleBase;
import org.scantling.rulebase.RuleBaseFault;

/** Runs the phases until nothing changes. */
final class Settling {
  private static final int MOST_PASSES = 24;
  private static final int MOST_SHRINKINGS = 3;

  private final RuleBase rules;
  private final CommonRows rows;
  private final Predicate<String> allowed;
  private final IntConsumer settled;

  /**
   * @param allowed the rules that may fire, by id
   * @param settled told how many passes each settling took
   */
  Settling(RuleBase rules, CommonRows rows, Predicate<String> allowed, IntConsumer settled) {
    this.rules = rules;
    this.rows = rows;
    this.allowed = allowed;
    this.settled = settled;
  }

  /** With everything that a reader wants, and nothing tried before. */
  Pass settle(DesignProblem problem) {
    return settle(problem, runner(problem, Detail.FULL), List.of());
  }

  /**
   * The answers that stay as they are, or the question that has none.
   *
   * <p>Within one settling sizes only grow, so a size may be left that only an earlier size of
   * something else asked for. So what has settled is settled once more from there, free to shrink,
   * until nothing does. Where nothing shrinks, the first settling tells which check stopped a size:
   * it was worked before the larger one brought other timbers with it. Where two answers lead to
   * each other, the first stays: what the second shrank to would be for a cause that is gone;
   * unless the first is the one that tells such a cause.
   *
   * @param tried what came of options that were tried before
   */
  Pass settle(DesignProblem problem, PhaseRunner runner, List<Fact> tried) {
    Pass first = settle(problem, runner, problem.start(tried), tried);
    Pass pass = first;
    for (int count = 1; count <= MOST_SHRINKINGS && pass.broken().isEmpty(); count++) {
      Pass again = settle(problem, runner, pass.answers(), tried);
      if (again.broken().isPresent()) {
        return pass;
      }
      if (again.answers().equals(pass.answers())) {
        pass.tellAmongTimbersOf(again);
        return pass;
      }
      if (again.answers().equals(first.answers())) {
        return first.tellsWhatIsGone() && !pass.tellsWhatIsGone() ? pass : first;
      }
      pass = again;
    }
    return pass;
  }

  /**
   * Runs passes until the answers stay as they are, or one question has no answer.
   *
   * <p>What the braces ask of the timbers is known only after the first pass. So a joint that
   * nothing holds is given up only once the timbers stay as they are.
   */
  private Pass settle(DesignProblem problem, PhaseRunner runner, Answers start, List<Fact> tried) {
    Answers answers = start;
    Optional<Pass> before = Optional.empty();
    for (int count = 1; count <= MOST_PASSES; count++) {
      Pass pass = new Pass(problem, runner, answers, before, tried);
      pass.run();
      boolean stays = pass.answers().equals(answers);
      if (stays || (pass.broken().isPresent() && !pass.brokenAtJoints())) {
        settled.accept(count);
        return pass;
      }
      answers = pass.answers();
      before = Optional.of(pass);
    }
    throw new RuleBaseFault("the answers still change after " + MOST_PASSES + " passes");
  }

  /** The number of bays that is tried next, among the answers that the last one came to. */
  Optional<String> nextBays(
      DesignProblem problem, PhaseRunner runner, Answers last, List<Fact> tried) {
    Pass pass = new Pass(problem, runner, last, Optional.empty(), tried);
    pass.runTo(Question.BAYS.phase());
    return pass.answered(Question.BAYS)
        ? Optional.of(pass.answers().option(Question.BAYS))
        : Optional.empty();
  }

  PhaseRunner runner(DesignProblem problem, Detail detail) {
    return new PhaseRunner(rules, allowed, rows, problem, detail);
  }
}
