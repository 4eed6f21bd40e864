package org.scantling.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Reason;
import org.scantling.words.SubjectRow;
import org.scantling.words.Subjects;
import org.scantling.words.Voice;

/** The reasons, along the load path: what changed, then what stayed and matters. */
final class WhySection {
  private final Proposal proposal;
  private final Subjects subjects;
  private final Voice voice;

  WhySection(Proposal proposal, Subjects subjects, Voice voice) {
    this.proposal = proposal;
    this.subjects = subjects;
    this.voice = voice;
  }

  void write(Page page) {
    List<Block.Item> changed = new ArrayList<>();
    List<String> following = new ArrayList<>();
    List<Block.Item> kept = new ArrayList<>();
    for (SubjectRow row : subjects.rows()) {
      Optional<Decision> found = proposal.decision(row.question());
      if (found.isPresent()) {
        Decision decision = found.get();
        if (decision.changed() && row.follows()) {
          following.add(row.builder() + " " + proposed(decision));
        } else if (decision.changed()) {
          changed.add(new Block.Item(change(decision), reason(decision)));
        } else if (row.safety()) {
          kept.add(new Block.Item(row.builder() + " " + proposed(decision), kept(decision)));
        }
      }
    }
    if (!changed.isEmpty()) {
      page.heading("Why").items(changed);
    }
    if (!following.isEmpty()) {
      page.paragraph("By measure there follow: " + String.join("; ", following) + ".");
    }
    if (!kept.isEmpty()) {
      page.heading("Kept, and checked again").items(kept);
    }
  }

  private String change(Decision decision) {
    return voice.label(decision.question())
        + " "
        + proposed(decision)
        + decision.base().map(base -> ", was " + voice.say(decision.question(), base)).orElse("");
  }

  private String proposed(Decision decision) {
    return voice.say(decision.question(), decision.proposed());
  }

  private String reason(Decision decision) {
    Reason reason = decision.governing();
    return voice.sentence(reason, decision) + " (" + voice.source(reason.source()) + ")";
  }

  /** The check that is worked hardest, where the thing has any. */
  private String kept(Decision decision) {
    return proposal.checks().stream()
        .filter(each -> each.role().equals(decision.question().subject()))
        .max(Comparator.comparingDouble(each -> each.check().ratio()))
        .map(this::worked)
        .orElseGet(() -> reason(decision));
  }

  private String worked(Checked checked) {
    return "hardest worked in "
        + voice.check(checked.id())
        + ", at "
        + voice.say(Measure.ratio(checked.check().ratio()))
        + " ("
        + voice.source(checked.source())
        + ")";
  }
}
