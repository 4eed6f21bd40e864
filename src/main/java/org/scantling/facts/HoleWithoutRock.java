package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.FootingWork;
import org.scantling.design.WayOfBuilding;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Proven;
import org.scantling.reasons.Question;
import org.scantling.tables.PostBed;

/** How posts would stand, in what and how deep, if no rock were below. */
final class HoleWithoutRock {
  private final DesignProblem problem;
  private final Answers answers;

  HoleWithoutRock(DesignProblem problem, Answers answers) {
    this.problem = problem;
    this.answers = answers;
  }

  /** How the posts would stand. */
  String kind() {
    String asked = problem.site().preferences().footing();
    if (asked.equals(WayOfBuilding.BRACKET) || asked.equals(WayOfBuilding.MOMENT_BASE)) {
      return asked;
    }
    return asked.equals("auto")
        ? proven(FOOTING_KIND).orElse(WayOfBuilding.EMBEDDED)
        : WayOfBuilding.EMBEDDED;
  }

  /** What would fill the holes. */
  private String fill(String kind) {
    return kind.equals(WayOfBuilding.EMBEDDED)
        ? WayOfBuilding.fillAsked(problem.site().preferences().footing())
            .or(() -> proven(FOOTING_BACKFILL))
            .orElseGet(() -> problem.tables().defaults().row("backfill").word())
        : WayOfBuilding.CONCRETE;
  }

  private Optional<String> proven(Question question) {
    return problem.base().facts().stream()
        .filter(each -> each.question() == question)
        .map(Proven::option)
        .findFirst();
  }

  /** How wide the holes of the base are; 0 where nobody knows. */
  double provenHoleIn() {
    return problem.base().facts().stream()
        .filter(each -> each.question() == HOLE_DIAMETER)
        .mapToDouble(Proven::number)
        .findFirst()
        .orElse(0);
  }

  /** How deep a hole would be dug, its bed counted. */
  double depthIn(String kind) {
    String fill = fill(kind);
    CheckContext unhindered = standing(kind, fill);
    double holeIn = unhindered.leastHoleIn();
    FootingWork work = unhindered.footing();
    double deepestIn = thumb("footing.pressure-depth-most");
    double depthIn = Math.max(frostIn(), thumb("footing.least-depth"));
    depthIn = Math.max(depthIn, work.embedment(holeIn).depthIn());
    depthIn = Math.max(depthIn, Math.min(deepestIn, work.upliftDepthIn(holeIn, deepestIn)));
    if (!unhindered.onBrackets()) {
      depthIn = Math.max(depthIn, Math.min(deepestIn, unhindered.sway().depthIn(1)));
    }
    return depthIn + bedIn(kind, fill);
  }

  CheckContext standing(String kind, String fill) {
    return problem.context(
        answers
            .with(Answer.option(FOOTING_KIND, kind))
            .with(Answer.option(FOOTING_BACKFILL, fill)));
  }

  private double frostIn() {
    boolean byExperience = problem.site().preferences().embedmentBasis().equals("experience");
    return byExperience ? 0 : answers.find(FROST_DEPTH).map(Answer::number).orElse(0.0);
  }

  /** Gravel, and the pad where there is one, under a foot that does not stand on the rock. */
  double bedIn(String kind, String fill) {
    boolean padded = kind.equals(WayOfBuilding.EMBEDDED) && !fill.equals(WayOfBuilding.CONCRETE);
    return PostBed.of(id -> problem.tables().shop(id).amount(), padded).depthIn();
  }

  private double thumb(String id) {
    return problem.tables().thumb(id).amount();
  }
}
