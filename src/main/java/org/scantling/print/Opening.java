package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;
import org.scantling.words.Words;

/** The answer, in a few sentences. */
final class Opening {
  private final Proposal proposal;
  private final Words words;
  private final Voice voice;

  Opening(Told told) {
    this.proposal = told.proposal();
    this.words = told.words();
    this.voice = told.voice();
  }

  void write(Page page, Structure structure) {
    Geometry geometry = structure.geometry();
    page.paragraph(
        "Build the "
            + proposal.baseTitle()
            + " "
            + inches(geometry.lengthIn())
            + " long in "
            + bays(geometry.plan().bays())
            + ", "
            + inches(geometry.clearWidthIn())
            + " clear between the posts and "
            + inches(geometry.headroomIn())
            + " free under the lowest timber. "
            + changes()
            + " "
            + new Passing(voice, proposal.yardstick())
                .sentence("All " + proposal.checks().size() + " checks", proposal.checks()));
  }

  private static String bays(int bays) {
    return bays == 1 ? "one bay" : bays + " bays";
  }

  private String changes() {
    List<String> changes = new ArrayList<>();
    for (SubjectRow row : words.subjects().rows()) {
      if (row.safety()) {
        proposal
            .decision(row.question())
            .filter(Decision::changed)
            .ifPresent(each -> changes.add(change(each)));
      }
    }
    return changes.isEmpty()
        ? "Every timber and every hole stays as proven."
        : "What must change: " + String.join("; ", changes) + ".";
  }

  private String change(Decision decision) {
    return voice.label(decision.question())
        + " from "
        + voice.say(decision.question(), decision.base().orElseThrow())
        + " to "
        + voice.say(decision.question(), decision.proposed());
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
