package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.scantling.answers.Answers;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Candidate;

/** The ways in which a walk can be divided into bays, and a bay by crossbeams. */
final class Divisions {
  private final DesignProblem problem;
  private final Answers answers;

  Divisions(DesignProblem problem, Answers answers) {
    this.problem = problem;
    this.answers = answers;
  }

  /** The walk divided by every number of bays, or a given design as it is divided. */
  List<Candidate.Parts> bays() {
    double rhythmIn = new Rhythm(problem, answers).bayIn();
    List<Candidate.Parts> parts = new ArrayList<>();
    for (int count : problem.bayCounts()) {
      double bayIn = bayIn(count);
      parts.add(
          new Candidate.Parts(
              BAYS,
              Integer.toString(count),
              count,
              bayIn,
              Math.min(bayIn, problem.bays(count).shortestIn()),
              bayIn / rhythmIn));
    }
    return parts;
  }

  /** Every number of equal spaces that could divide a bay, or the one that is given. */
  List<Candidate.Parts> crossbeamsPerBay() {
    double bayIn = bayIn(Integer.parseInt(answers.option(BAYS)));
    double provenIn = problem.base().geometry().crossbeamSpacingIn();
    List<Candidate.Parts> parts = new ArrayList<>();
    for (int count : spacings(bayIn)) {
      double spacingIn = bayIn / count;
      parts.add(Candidate.Parts.alike(CROSSBEAMS_PER_BAY, count, spacingIn, spacingIn / provenIn));
    }
    return parts;
  }

  private List<Integer> spacings(double bayIn) {
    double leastIn = problem.tables().thumb("crossbeam.spacing-least").amount();
    int most = Math.max(1, (int) Math.ceil(bayIn / leastIn));
    return problem
        .fixed(CROSSBEAMS_PER_BAY, answers)
        .map(given -> List.of(Integer.parseInt(given.option())))
        .orElseGet(() -> IntStream.rangeClosed(1, most).boxed().toList());
  }

  /** A bay as given, else the longest of those into which the walk is divided. */
  private double bayIn(int bays) {
    return problem
        .fixed(BAY, answers)
        .map(Answer::number)
        .orElseGet(() -> problem.bays(bays).longestIn());
  }
}
