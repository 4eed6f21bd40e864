package org.scantling.property;

import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;

/** What became of a site, in a few words to count by. */
final class Answered {
  private Answered() {}

  static String of(Proposal proposal) {
    return proposal.result() instanceof Proposal.Result.NeedsEngineer refused
        ? refused(refused)
        : "proposed";
  }

  private static String refused(Proposal.Result.NeedsEngineer refused) {
    String check =
        refused.reason().finding() instanceof Finding.Reject reject ? reject.check() : "no check";
    String question = refused.broken().map(Question::id).orElse("the whole site");
    return "refused for " + refused.demand() + ": " + question + " by " + check;
  }
}
