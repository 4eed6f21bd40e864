package org.scantling.facts;

import static org.scantling.reasons.Question.*;

import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.answers.Rounding;
import org.scantling.candidates.CheckContext;
import org.scantling.confirm.FootSway;
import org.scantling.confirm.FootingWork;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Worked;

/**
 * What it means that the soil is trusted with twice its tabled value: how far the feet move, and
 * what would do without.
 */
final class SoilDoubling {
  /** What rounding leaves. */
  private static final double HAIR_IN = 1e-6;

  private final DesignProblem problem;
  private final CheckContext context;
  private final Answers answers;

  SoilDoubling(DesignProblem problem, CheckContext context) {
    this.problem = problem;
    this.context = context;
    this.answers = context.answers();
  }

  /**
   * Empty where the soil is not so trusted, where the holes are deep enough without, and where they
   * are too shallow even so: what they rest on is then another thing.
   */
  Optional<Worked> fact() {
    if (!context.doubled() || context.onBrackets()) {
      return Optional.empty();
    }
    double dugIn = answers.number(FOOTING_DEPTH);
    double withoutIn = withoutIn(context.foot().concrete());
    boolean saves = withoutIn > dugIn && neededIn(context.foot()) <= dugIn + HAIR_IN;
    return saves ? Optional.of(fact(dugIn, withoutIn)) : Optional.empty();
  }

  private Worked fact(double dugIn, double withoutIn) {
    FootSway.Moved moved = context.sway().moved(dugIn);
    double mostAtGroundIn = problem.tables().thumb("footing.isolated-movement").amount();
    Evidence evidence =
        Evidence.saw("ground", Measure.inches(moved.groundIn()))
            .and("turned", Measure.inches(moved.turnedIn()))
            .and("allowed", Measure.inches(mostAtGroundIn))
            .and("presumed", Measure.inches(moved.topIn(mostAtGroundIn)))
            .and("limit", Measure.inches(moved.mostIn()));
    if (withoutIn > problem.site().ground().rockAtIn().orElse(Double.POSITIVE_INFINITY)) {
      return worked(withoutIn, evidence);
    }
    evidence = evidence.and("without", Measure.inches(rounded(withoutIn)));
    if (!context.foot().concrete()) {
      evidence =
          evidence
              .and("collar", Measure.inches(rounded(Math.max(withoutIn(true), leastIn()))))
              .and("wide", Measure.inches(answers.number(HOLE_DIAMETER)));
    }
    return worked(withoutIn, evidence);
  }

  private Worked worked(double withoutIn, Evidence evidence) {
    return new Worked(
        "footing.doubled",
        FOOTING_DEPTH,
        withoutIn,
        evidence,
        problem.tables().thumb("footing.isolated-factor").source());
  }

  private double rounded(double depthIn) {
    return Rounding.of(FOOTING_DEPTH, problem.metric()).round(depthIn);
  }

  private double leastIn() {
    double leastIn = problem.tables().thumb("footing.least-depth").amount();
    return Math.max(leastIn, answers.number(FROST_DEPTH));
  }

  /** The depth that the push asks for by the tabled value, in fill or in a collar of concrete. */
  private double withoutIn(boolean concrete) {
    FootingWork.Foot foot = context.foot();
    FootingWork.Foot firm =
        new FootingWork.Foot(
            concrete,
            foot.postBreadthIn(),
            foot.soil(),
            1,
            foot.weights(),
            foot.stiffeningLbPerIn3(),
            foot.gripRatio());
    return neededIn(firm);
  }

  private double neededIn(FootingWork.Foot foot) {
    return FootingWork.sideways(foot, context.standing())
        .embedment(answers.number(HOLE_DIAMETER))
        .depthIn();
  }
}
