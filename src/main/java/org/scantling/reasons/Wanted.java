package org.scantling.reasons;

import java.util.Optional;
import org.scantling.quantity.Measure;

/**
 * The answer that somebody would rather have.
 *
 * @param question what is answered
 * @param value the answer that is wanted
 * @param bound how near it must be met
 */
public record Wanted(Question question, Outcome value, Bound bound) {
  private static final double SLACK = 1e-6;

  /**
   * A word and a number of bays are met by themselves; any other number also by what lies beyond
   * it, seen from today's.
   */
  public enum Bound {
    JUST_THIS,
    AT_MOST,
    AT_LEAST
  }

  /** The bound that a number needs which somebody wants instead of today's. */
  public static Wanted instead(Question question, Outcome value, Optional<Outcome> today) {
    if (value instanceof Outcome.Amount wanted && !question.counted()) {
      boolean more =
          today.filter(now -> amount(now) < wanted.measure().amount() - SLACK).isPresent();
      return new Wanted(question, value, more ? Bound.AT_LEAST : Bound.AT_MOST);
    }
    return new Wanted(question, value, Bound.JUST_THIS);
  }

  /** True where a proposal answers so. */
  public boolean met(Proposal proposal) {
    return proposal.proposed()
        && proposal.decision(question).filter(each -> met(each.proposed())).isPresent();
  }

  private boolean met(Outcome answer) {
    return switch (bound) {
      case JUST_THIS -> answer.equals(value);
      case AT_MOST -> amount(answer) <= amount(value) + SLACK;
      case AT_LEAST -> amount(answer) >= amount(value) - SLACK;
    };
  }

  private static double amount(Outcome outcome) {
    Measure measure = ((Outcome.Amount) outcome).measure();
    return measure.amount();
  }
}
