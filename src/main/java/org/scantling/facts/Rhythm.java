package org.scantling.facts;

import static org.scantling.reasons.Question.BAYS;
import static org.scantling.reasons.Question.CLEAR_WIDTH;
import static org.scantling.reasons.Question.HEADROOM;

import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.design.Geometry;
import org.scantling.problem.DesignProblem;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Worked;
import org.scantling.tables.NumberRow;

/**
 * The bay by which a walk is divided: that of the base, grown with the way where it is wider or
 * higher than that of the base, so that an opening keeps its proportion. A walk that is only longer
 * keeps the bay; one that is narrower or lower too, since nobody misses what is left of its room.
 */
final class Rhythm {
  private final DesignProblem problem;
  private final double widthRatio;
  private final double heightRatio;
  private final NumberRow share;
  private final NumberRow from;

  Rhythm(DesignProblem problem, Answers answers) {
    Geometry base = problem.base().geometry();
    this.problem = problem;
    this.widthRatio = grown(answers.number(CLEAR_WIDTH), base.clearWidthIn());
    this.heightRatio = grown(answers.number(HEADROOM), base.headroomIn());
    this.share = problem.tables().thumbs().row("bay.grow-share");
    this.from = problem.tables().thumbs().row("bay.grow-from");
  }

  private static double grown(double here, double base) {
    return Math.max(1, here / base);
  }

  private double provenIn() {
    return problem.site().base().posts().bayIn();
  }

  /** By the mean of both, as far as the look goes with them; not at all by what nobody sees. */
  private double growthRatio() {
    double mean = (widthRatio + heightRatio) / 2;
    return mean < from.amount() ? 1 : 1 + share.amount() * (mean - 1);
  }

  double bayIn() {
    return provenIn() * growthRatio();
  }

  /** Empty where it is the bay of the base. */
  Optional<Worked> grown() {
    return growthRatio() > 1
        ? Optional.of(new Worked("bay.grown", BAYS, bayIn(), evidence(), share.source()))
        : Optional.empty();
  }

  private Evidence evidence() {
    return Evidence.by(share)
        .row(from)
        .and("proven", Measure.inches(provenIn()))
        .and("growth", Measure.ratio(growthRatio() - 1))
        .and("wider", Measure.ratio(widthRatio - 1))
        .and("higher", Measure.ratio(heightRatio - 1));
  }
}
