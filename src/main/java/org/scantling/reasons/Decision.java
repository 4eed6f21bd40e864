package org.scantling.reasons;

import java.util.List;
import java.util.Optional;

/**
 * An answered question with everything that led to the answer.
 *
 * @param question what was decided
 * @param base how the base design has it, where it has it
 * @param proposed the answer
 * @param changed whether the answer differs from the base
 * @param reasons the governing reason first
 * @param rejected options that could not be, in rank order, each with what stopped it hardest
 * @param contributions the changed answers that moved the governing number, the one that moved it
 *     most first; empty where nothing changed, or the governing finding rests on no calculation
 */
public record Decision(
    Question question,
    Optional<Outcome> base,
    Outcome proposed,
    boolean changed,
    List<Reason> reasons,
    List<Reason> rejected,
    List<Contribution> contributions) {

  public Decision {
    reasons = List.copyOf(reasons);
    rejected = List.copyOf(rejected);
    contributions = List.copyOf(contributions);
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException(question.id() + " was answered without a reason");
    }
  }

  public Reason governing() {
    return reasons.get(0);
  }
}
