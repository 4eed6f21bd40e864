package org.scantling.causes;

import java.util.List;
import java.util.OptionalDouble;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.candidates.JointChecks;
import org.scantling.design.WayOfBuilding;
import org.scantling.facts.DerivedQuantities;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Worked;
import org.scantling.tables.JointRow;

/**
 * The calculated number that governs a decision, worked again for other answers: the ratio of the
 * check that stopped an option, or a number that a kernel or the geometry asked for.
 */
final class Gauge {
  private static final String EMBEDMENT = "footing.embedment";

  private final DesignProblem problem;
  private final Question question;
  private final Reason governing;

  /**
   * @param governing the finding whose number it is
   */
  Gauge(DesignProblem problem, Question question, Reason governing) {
    this.problem = problem;
    this.question = question;
    this.governing = governing;
  }

  /** The number with those answers; empty where the check does not arise. */
  OptionalDouble with(Answers answers) {
    return governing.finding() instanceof Finding.Reject reject
        ? ratio(reject, answers)
        : worked(answers);
  }

  private OptionalDouble ratio(Finding.Reject reject, Answers answers) {
    return checks(reject, answers).stream()
        .filter(each -> each.id().equals(reject.check()))
        .mapToDouble(each -> each.check().ratio())
        .max();
  }

  private List<Checked> checks(Finding.Reject reject, Answers answers) {
    CheckContext context = problem.context(answers);
    if (problem.tables().checks().find(reject.check()).isEmpty()) {
      return List.of();
    }
    if (question.phase() == Phase.JOINTS) {
      JointRow row = problem.tables().joints().row(reject.option());
      // Bolts through the posts hold no header that lies on top of them.
      return row.fits(WayOfBuilding.headers(context.geometry().headers().paired()))
          ? new JointChecks(context).checks(row)
          : List.of();
    }
    if (question == Question.CROSSBEAM_BLOCKING) {
      return new JointChecks(context).blocking(reject.option());
    }
    // A number of bays that led nowhere names a check of another question.
    boolean size = question.attribute().equals("size");
    return size ? context.checks(question, reject.option()) : List.of();
  }

  private OptionalDouble worked(Answers answers) {
    if (governing.because().contains(EMBEDMENT)) {
      CheckContext context = problem.context(answers);
      return OptionalDouble.of(context.embedmentIn(answers.number(Question.HOLE_DIAMETER)));
    }
    return new DerivedQuantities(problem, problem.context(answers))
        .facts(question.phase()).stream()
            .filter(Worked.class::isInstance)
            .map(Worked.class::cast)
            .filter(each -> each.question() == question)
            .filter(each -> governing.because().contains(each.id()))
            .mapToDouble(Worked::number)
            .findFirst();
  }
}
