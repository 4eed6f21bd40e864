package org.scantling.reasons;

/** What becomes of one question when a demand of the site has one value. */
public sealed interface Choice {
  /** It is answered. */
  record Made(Decision decision) implements Choice {}

  /** The structure has no such thing, so it is not asked. */
  record Needless() implements Choice {}

  /** There is no structure at all inside the rule base. */
  record Refused(Proposal.Result.NeedsEngineer result) implements Choice {}

  /** What a proposal says to a question. */
  static Choice of(Proposal proposal, Question question) {
    if (proposal.result() instanceof Proposal.Result.NeedsEngineer refused) {
      return new Refused(refused);
    }
    return proposal.decision(question).<Choice>map(Made::new).orElseGet(Needless::new);
  }

  /** True where the answer is the same, whatever led to it. */
  default boolean same(Choice other) {
    if (this instanceof Made one && other instanceof Made two) {
      return one.decision().proposed().equals(two.decision().proposed());
    }
    return getClass() == other.getClass();
  }

  default boolean refused() {
    return this instanceof Refused;
  }
}
