package org.scantling.workings;

import java.util.List;
import java.util.Set;
import org.scantling.mechanics.BeamResult;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Evidence;
import org.scantling.workings.BeamBurden.Part;

/**
 * The statics of one beam under one arrangement of loads, from what lies on it to the moments over
 * its supports, its shears and reactions. What is asked for is written, and what it follows from
 * that is not written yet.
 */
final class BeamStatics {
  private final BeamLines lines;
  private final SupportMoments supportMoments;
  private final BeamShears shears;
  private final BeamReactions reactions;
  private final SpanMoments spanMoments;
  private final SolvedStatics solved;
  private final boolean uneven;

  BeamStatics(BeamTask task, Part part) {
    this.lines = new BeamLines(task, task.burden(part));
    this.supportMoments = new SupportMoments(lines);
    this.shears = new BeamShears(lines);
    this.reactions = new BeamReactions(lines, shears);
    this.spanMoments = new SpanMoments(lines, shears);
    this.solved = new SolvedStatics(lines);
    this.uneven = task.uneven();
    new BurdenLines(lines).write();
  }

  /** The lines so far, each once. */
  List<CalculationStep> lines() {
    return lines.list();
  }

  BeamResult result() {
    return lines.result();
  }

  /** The moments over some supports and what they follow from. */
  void moments(Set<Integer> supports) {
    if (uneven) {
      supportMoments.writeSolved();
    } else {
      supportMoments.write(supports);
    }
  }

  /**
   * Shear beside a support, pushing the support down.
   *
   * @param other the support at the other end of the span; outside the row for a tail
   */
  double shear(int support, int other) {
    boolean tail = other < 0 || other > lines.lastSupport();
    return uneven && !tail ? solved.shear(support, other) : shears.beside(support, other);
  }

  /** Load on a support. */
  double reaction(int support) {
    return uneven
        ? solved.reaction(support, shear(support, support - 1), shear(support, support + 1))
        : reactions.on(support);
  }

  /** What the end of a piece presses where it is cut over a support. */
  double atCut(int support, int towards) {
    return uneven ? solved.atCut(support, towards) : reactions.atCut(support, towards);
  }

  /**
   * Moment in a span, pulling the underside.
   *
   * @param fromIn from its first support
   */
  double moment(int span, double fromIn) {
    return uneven ? solved.moment(span, fromIn) : spanMoments.at(span, fromIn);
  }

  /** Moment over a support, pulling the top. */
  double over(int support) {
    return lines.over(support);
  }

  /** The even load on a span by the inch. */
  Measure even(int span) {
    return lines.even(lines.burden().region(span));
  }

  /**
   * Of a header what each crossbeam on a span presses, and their spaces; of a crossbeam nothing.
   */
  Evidence withCrossbeams(Evidence evidence, int span) {
    return lines.withCrossbeams(evidence, span);
  }
}
