package org.scantling.print;

import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Proposal.Result;
import org.scantling.words.Subjects;
import org.scantling.words.Voice;

/** What is said where no structure fits. */
final class EngineerSection {
  private final Proposal proposal;
  private final Subjects subjects;
  private final Voice voice;

  EngineerSection(Proposal proposal, Subjects subjects, Voice voice) {
    this.proposal = proposal;
    this.subjects = subjects;
    this.voice = voice;
  }

  void write(Page page, Result.NeedsEngineer result) {
    page.paragraph(
        "This is a case for a licensed engineer: these rules hold no structure that would stand"
            + " here.");
    page.heading("What breaks it");
    page.paragraph(
        voice.sentence(result.reason()) + " (" + voice.source(result.reason().source()) + ")");
    page.heading("What would bring it back");
    page.paragraph(back(result));
  }

  private String back(Result.NeedsEngineer result) {
    if (result.reason().finding() instanceof Finding.Refuse refuse) {
      String limit =
          refuse
              .evidence()
              .find("limit")
              .map(seen -> voice.say(((org.scantling.reasons.Evidence.Seen.Amount) seen).measure()))
              .orElse("the limit");
      return "With "
          + voice.path(refuse.demand())
          + " of "
          + limit
          + " or less the rules can take it up again.";
    }
    return "Ask for less of " + voice.path(result.demand()) + " (" + result.demand() + ").";
  }
}
