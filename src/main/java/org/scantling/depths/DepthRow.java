package org.scantling.depths;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Reasoned;
import org.scantling.reasons.Review;
import org.scantling.reasons.Source;

/**
 * One cell of a table of hole depths.
 *
 * @param depthIn empty where no hole does
 * @param diameterIn of the hole; empty where no hole does
 * @param governs the rule that asked for that depth; where no hole does, the check that the post
 *     fails, or the rule that asked for more than can be dug
 * @param source what is behind that
 * @param decision the depth with all its reasons, where there is one
 * @param refusal why the rules say nothing of such a place, where they refuse it
 */
public record DepthRow(
    DepthCase at,
    OptionalDouble depthIn,
    OptionalDouble diameterIn,
    String governs,
    Source source,
    Optional<Decision> decision,
    Optional<Reason> refusal) {
  private static final String OF_POSTS = "post.";

  /** The hole of an answer that has one. */
  static Optional<DepthRow> answered(DepthCase at, Reasoned answer) {
    return answer
        .decision(Question.FOOTING_DEPTH)
        .map(
            decision ->
                new DepthRow(
                    at,
                    OptionalDouble.of(inches(decision)),
                    answer
                        .decision(Question.HOLE_DIAMETER)
                        .map(width -> OptionalDouble.of(inches(width)))
                        .orElse(OptionalDouble.empty()),
                    decision.governing().note().id(),
                    decision.governing().source(),
                    Optional.of(decision),
                    Optional.empty()));
  }

  /** The hole of a structure that is decided but for that, or what stands against every hole. */
  static DepthRow of(DepthCase at, Review review) {
    Optional<Checked> weak =
        review.failing().stream().filter(each -> each.id().startsWith(OF_POSTS)).findFirst();
    return weak.map(check -> none(at, check.id(), check.source(), Optional.empty()))
        .or(() -> review.refusal().map(refused -> refused(at, refused.reason())))
        .or(() -> answered(at, review))
        .or(
            () ->
                review.limits().stream()
                    .filter(each -> each.question() == Question.FOOTING_DEPTH)
                    .findFirst()
                    .map(each -> none(at, each.reason())))
        .orElseThrow(() -> new IllegalStateException("no rule asked for a hole: " + at));
  }

  private static DepthRow refused(DepthCase at, Reason reason) {
    return none(at, reason.note().id(), reason.source(), Optional.of(reason));
  }

  private static DepthRow none(DepthCase at, Reason reason) {
    return none(at, reason.note().id(), reason.source(), Optional.empty());
  }

  private static DepthRow none(
      DepthCase at, String governs, Source source, Optional<Reason> refusal) {
    return new DepthRow(
        at,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        governs,
        source,
        Optional.empty(),
        refusal);
  }

  /** True where the post itself is too weak, however it stands. */
  public boolean weakPost() {
    return depthIn.isEmpty() && governs.startsWith(OF_POSTS);
  }

  private static double inches(Decision decision) {
    Measure measure = ((Outcome.Amount) decision.proposed()).measure();
    return measure.amount();
  }
}
