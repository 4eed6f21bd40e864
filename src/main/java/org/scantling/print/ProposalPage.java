package org.scantling.print;

import java.util.List;
import java.util.stream.Collectors;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** The page of a proposal, for the builder. */
final class ProposalPage {
  private ProposalPage() {}

  static Page of(Proposal proposal, Words words, UnitSystem units) {
    Told told = Told.to(Reader.BUILDER, proposal, words, units);
    Page page = new Page().title(proposal.title());
    if (proposal.result() instanceof Result.Proposed done) {
      List<Compared> lines = new Comparison(told).lines();
      new Opening(told).write(page, done.structure(), lines);
      new ThenAndNow(lines).write(page);
      new WhatToBuild(told, done.structure()).write(page);
      new WhySection(told).write(page);
      new BesideBase(told.voice(), proposal.yardstick())
          .write(page, proposal.baseTitle(), proposal.checks());
    } else {
      new EngineerSection(told).write(page, (Result.NeedsEngineer) proposal.result());
    }
    cautions(page, told);
    given(page, told);
    if (proposal.proposed()) {
      new Assumed(told).write(page);
    }
    return page;
  }

  private static void given(Page page, Told told) {
    if (!told.proposal().given().isEmpty()) {
      page.heading("Given in the site file");
      page.paragraph(
          Sentence.capital(
              told.proposal().given().stream()
                      .map(told.voice()::stated)
                      .collect(Collectors.joining("; "))
                  + "."));
    }
  }

  private static void cautions(Page page, Told told) {
    if (!told.proposal().cautions().isEmpty()) {
      page.heading("Take care");
      page.add(
          Block.Items.of(told.proposal().cautions().stream().map(told.voice()::sentence).toList()));
    }
  }
}
