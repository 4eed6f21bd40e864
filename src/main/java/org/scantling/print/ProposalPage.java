package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Reason;
import org.scantling.words.Reader;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** The page of a proposal, for the builder. */
final class ProposalPage {
  private final Proposal proposal;
  private final Words words;
  private final Voice voice;

  ProposalPage(Proposal proposal, Words words, UnitSystem units) {
    this.proposal = proposal;
    this.words = words;
    this.voice = words.voice(Reader.BUILDER, units);
  }

  Page page() {
    Page page = new Page().title(proposal.title());
    if (proposal.result() instanceof Result.Proposed done) {
      new Opening(proposal, words, voice).write(page, done.structure());
      ThenAndNow table = new ThenAndNow(proposal, words.subjects(), voice);
      table.write(page);
      new WhySection(proposal, words.subjects(), voice).write(page);
    } else {
      new EngineerSection(proposal, words.subjects(), voice)
          .write(page, (Result.NeedsEngineer) proposal.result());
    }
    cautions(page);
    assumptions(page);
    return page;
  }

  private void cautions(Page page) {
    if (!proposal.cautions().isEmpty()) {
      page.heading("Take care");
      page.add(Block.Items.of(proposal.cautions().stream().map(voice::sentence).toList()));
    }
  }

  private void assumptions(Page page) {
    List<Block.Item> items = new ArrayList<>();
    for (String path : proposal.assumptions()) {
      assumed(path).ifPresent(items::add);
    }
    if (!items.isEmpty()) {
      page.heading("Assumed, because the file does not say");
      page.items(items);
    }
  }

  private Optional<Block.Item> assumed(String path) {
    Optional<Decision> decision =
        words.subjects().at(path).map(SubjectRow::question).flatMap(proposal::decision);
    return decision.map(
        each -> {
          Reason reason = each.governing();
          return new Block.Item(
              voice.label(each.question()) + " " + voice.say(each.question(), each.proposed()),
              voice.sentence(reason) + " (" + voice.source(reason.source()) + ")");
        });
  }
}
