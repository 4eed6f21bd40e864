package org.scantling.print;

import java.util.List;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** The page of a proposal, for the builder. */
final class ProposalPage {
  private ProposalPage() {}

  static Page of(Proposal proposal, Words words, PrintOptions options, Page more) {
    Told told = Told.to(Reader.BUILDER, proposal, words, options.units());
    Page page = new Page().title(proposal.title());
    if (proposal.result() instanceof Result.Proposed done) {
      List<Compared> lines = new Comparison(told).lines();
      new Opening(told).write(page, done.structure(), lines);
      TakenBase.write(page, proposal, told.voice());
      new ThenAndNow(lines).write(page);
      new WhatToBuild(told, done.structure()).write(page);
      new WhySection(told).write(page);
      new BesideBase(told.voice(), proposal.checkLimits())
          .write(page, proposal.baseTitle(), proposal.checks());
    } else {
      new EngineerSection(told).write(page, (Result.NeedsEngineer) proposal.result());
      TakenBase.write(page, proposal, told.voice());
    }
    more.blocks().forEach(page::add);
    Caveats.write(page, told, options);
    return page;
  }
}
