package org.scantling.workings;

import static org.scantling.reasons.Question.CROSSBEAM_SIZE;
import static org.scantling.reasons.Question.HEADER_SIZE;
import static org.scantling.reasons.Question.POST_SIZE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.reasons.TriedSize;

/**
 * The next smaller size of crossbeam, header and post where a check stopped it, that check worked
 * by the lines by which the size proposed is worked.
 */
public final class TriedSizes {
  /** As near as the same calculation comes to its own result. */
  private static final double SAME = 1e-9;

  private static final List<Question> MEMBERS = List.of(CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE);

  private final DesignProblem problem;
  private final Answers answers;
  private final Function<Question, Answers> among;
  private final CalculationSteps steps;

  /**
   * @param answers as they stand in the end
   * @param among the answers that stood when a question was asked
   */
  public TriedSizes(DesignProblem problem, Answers answers, Function<Question, Answers> among) {
    this.problem = problem;
    this.answers = answers;
    this.among = among;
    this.steps = new CalculationSteps(problem.tables());
  }

  public List<TriedSize> of(List<Decision> decisions) {
    List<TriedSize> tried = new ArrayList<>();
    for (Decision each : decisions) {
      if (MEMBERS.contains(each.question())) {
        nextSmaller(each).flatMap(this::worked).ifPresent(tried::add);
      }
    }
    return tried;
  }

  /** The last of them is the nearest to what is proposed. */
  private static Optional<Finding.Reject> nextSmaller(Decision decision) {
    if (decision.rejected().isEmpty()) {
      return Optional.empty();
    }
    Finding last = decision.rejected().get(decision.rejected().size() - 1).finding();
    return last instanceof Finding.Reject reject && reject.calculated()
        ? Optional.of(reject)
        : Optional.empty();
  }

  /**
   * Among the answers among which it was stopped; where those are gone, among what stands now.
   * Empty where no line is told of that check.
   */
  private Optional<TriedSize> worked(Finding.Reject reject) {
    CheckContext then = problem.context(among.apply(reject.question()));
    CheckContext now = problem.context(answers);
    return Stream.of(then, now)
        .flatMap(each -> worked(each, reject).stream())
        .filter(each -> each.asStopped() || each.checked().check().ratio() > 1)
        .min(Comparator.comparing(each -> !each.asStopped()));
  }

  private Optional<TriedSize> worked(CheckContext context, Finding.Reject reject) {
    CheckContext tried = context.with(reject.question(), reject.option());
    return tried.checks(reject.question(), reject.option()).stream()
        .filter(each -> each.id().equals(reject.check()))
        .filter(each -> Double.isFinite(each.check().ratio()))
        .findFirst()
        .map(
            check ->
                new TriedSize(
                    reject.question(),
                    reject.option(),
                    check,
                    Math.abs(check.check().ratio() - reject.ratio()) < SAME,
                    lines(tried, reject)))
        .filter(each -> !each.steps().isEmpty());
  }

  /** Those of the member that are told of the check. */
  private List<CalculationStep> lines(CheckContext tried, Finding.Reject reject) {
    return of(tried, reject.question()).stream()
        .filter(
            step ->
                step.evidence()
                    .find("check")
                    .filter(Evidence.Seen.Word.class::isInstance)
                    .map(each -> ((Evidence.Seen.Word) each).text())
                    .filter(reject.check()::equals)
                    .isPresent())
        .toList();
  }

  private List<CalculationStep> of(CheckContext tried, Question question) {
    if (question == CROSSBEAM_SIZE) {
      return BeamTrace.crossbeam(tried, steps).list();
    }
    if (question == HEADER_SIZE) {
      return BeamTrace.header(tried, steps).list();
    }
    if (tried.onBrackets()) {
      return BracedTrace.of(tried, steps);
    }
    List<CalculationStep> list = new ArrayList<>(new PostTrace(tried, steps).list());
    list.addAll(new NotchTrace(tried, steps).list());
    list.addAll(new SwayTrace(tried, steps).list());
    return list;
  }
}
