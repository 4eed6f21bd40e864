package org.scantling.causes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.design.Geometry;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Contribution;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;

/**
 * Which of the changed answers moved the number that governs a decision: each alone is put back as
 * the base has it, the loads follow it by their rules, and the number is worked again.
 */
public final class Attribution {
  /**
   * What moves a number by less than this share of what the chief contribution does is left unsaid.
   */
  private static final double WORTH_SAYING = 0.2;

  private static final double LAST_BITS = 1e-6;

  private final DesignProblem problem;
  private final Answers answers;
  private final List<Answer> changed;
  private final UnaryOperator<Answers> loaded;
  private final Map<Question, Answers> putBack = new LinkedHashMap<>();

  /**
   * @param answers as they stand
   * @param changed how the base has every answer that is not as in the base
   * @param loaded the same answers with the loads that go with them
   */
  public Attribution(
      DesignProblem problem, Answers answers, List<Answer> changed, UnaryOperator<Answers> loaded) {
    this.problem = problem;
    this.answers = answers;
    this.changed = List.copyOf(changed);
    this.loaded = loaded;
  }

  /** The contributions to a question's governing finding, the one that moved it most first. */
  public List<Contribution> of(Question question, Reason governing) {
    Gauge gauge = new Gauge(problem, question, governing);
    Set<Question> reads = EnumSet.noneOf(Question.class);
    OptionalDouble now = gauge.with(answers.watched(reads::add));
    List<Contribution> contributions = new ArrayList<>();
    if (now.isPresent() && now.getAsDouble() > 0) {
      putBack()
          .forEach(
              (each, back) -> {
                if (each != question && differs(back, reads)) {
                  contributions.add(new Contribution(each, share(gauge, each, now.getAsDouble())));
                }
              });
    }
    contributions.sort(Comparator.comparingDouble(Contribution::shareRatio).reversed());
    double least = contributions.isEmpty() ? 0 : WORTH_SAYING * contributions.get(0).shareRatio();
    contributions.removeIf(each -> each.shareRatio() < Math.max(LAST_BITS, least));
    return contributions;
  }

  /** False where nothing that the number was worked from is otherwise. */
  private boolean differs(Answers back, Set<Question> reads) {
    return reads.stream().anyMatch(each -> !back.find(each).equals(answers.find(each)));
  }

  /** What goes of the number when one answer is as in the base; below 0 where it grows. */
  private double share(Gauge gauge, Question back, double now) {
    OptionalDouble then = gauge.with(Objects.requireNonNull(putBack().get(back)));
    return then.isPresent() ? (now - then.getAsDouble()) / now : gone(back);
  }

  /** A check that only this way of standing brings is moved by it altogether. */
  private static double gone(Question back) {
    return back.phase() == Phase.SUPPORT ? 1 : 0;
  }

  /** The answers with one of the changed ones as in the base, worked once for all decisions. */
  private Map<Question, Answers> putBack() {
    if (putBack.isEmpty()) {
      for (Answer before : changed) {
        Answers back = answers.with(before);
        if (graded(before) && leavesWood(back)) {
          boolean loads = before.question().phase() == Phase.CLIMATE;
          putBack.put(before.question(), loads ? loaded.apply(back) : back);
        }
      }
    }
    return putBack;
  }

  /** False for a size that the standard does not grade in this timber. */
  private boolean graded(Answer before) {
    return !before.question().attribute().equals("size")
        || problem.context(answers).material(before.question(), before.option()).isPresent();
  }

  /**
   * False where a seat of one design would be cut, with the sunk heads of its screws, right through
   * a timber of the other.
   */
  private boolean leavesWood(Answers back) {
    CheckContext context = problem.context(back);
    Geometry geometry = context.geometry();
    Geometry.Headers headers = geometry.headers();
    return headers.notchIn() + context.sunkIn() < headers.depthIn()
        && geometry.crossbeams().notchIn() < geometry.crossbeams().depthIn();
  }
}
