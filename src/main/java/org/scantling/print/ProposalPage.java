package org.scantling.print;

import java.util.List;
import java.util.function.Predicate;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Stated;
import org.scantling.words.Reader;
import org.scantling.words.Words;

/** The page of a proposal, for the builder. */
final class ProposalPage {
  private ProposalPage() {}

  static Page of(Proposal proposal, Words words, PrintOptions options) {
    Told told = Told.to(Reader.BUILDER, proposal, words, options.units());
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
    given(page, "Given in the site file", told, stated -> !options.set(path(stated)));
    given(page, "Set beside the site file (--set)", told, stated -> options.set(path(stated)));
    if (proposal.proposed()) {
      new Assumed(told).write(page);
    }
    return page;
  }

  private static void given(Page page, String heading, Told told, Predicate<Stated> which) {
    List<String> given =
        told.proposal().given().stream().filter(which).map(told.voice()::stated).toList();
    if (!given.isEmpty()) {
      page.heading(heading).paragraph(Sentence.capital(String.join("; ", given) + "."));
    }
  }

  private static String path(Stated stated) {
    return stated.demand().setting();
  }

  private static void cautions(Page page, Told told) {
    if (!told.proposal().cautions().isEmpty()) {
      page.heading("Take care");
      page.add(
          Block.Items.of(told.proposal().cautions().stream().map(told.voice()::sentence).toList()));
    }
  }
}
