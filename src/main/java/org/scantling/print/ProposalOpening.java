package org.scantling.print;

import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** What a proposal comes to, in a few sentences, for whoever has just described the place. */
public final class ProposalOpening {
  private ProposalOpening() {}

  /** The answer and what changes from the base, or why nothing is proposed. */
  public static String of(Proposal proposal, Words words, PrintOptions options) {
    Told told = Told.to(Reader.BUILDER, proposal, words, options.units());
    Page page = new Page().title(proposal.title());
    if (proposal.result() instanceof Result.Proposed done) {
      new Opening(told).writeAlone(page, done.structure(), new Comparison(told).lines());
    } else {
      new EngineerSection(told).write(page, (Result.NeedsEngineer) proposal.result());
    }
    return TextPage.print(page, options);
  }
}
