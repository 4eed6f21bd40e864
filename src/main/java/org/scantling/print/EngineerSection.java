package org.scantling.print;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.words.Voice;

/** What is said where no structure fits: what breaks it, by how much, and what would help. */
final class EngineerSection {
  private static final String TAKE_ALONG =
      "Take along this page, the base design and, if it has been built, pictures of it.";

  private final Voice voice;
  private final String baseTitle;

  EngineerSection(Told told) {
    this(told.voice(), told.proposal().baseTitle());
  }

  EngineerSection(Voice voice, String baseTitle) {
    this.voice = voice;
    this.baseTitle = baseTitle;
  }

  void write(Page page, Result.NeedsEngineer result) {
    page.paragraph(
        "This is a case for a licensed engineer. These rules have no structure that they can vouch"
            + " for on this site.");
    page.heading("What rules it out").paragraph(broken(result));
    page.heading("What would bring it back").paragraph(back(result));
    page.heading("What to ask the engineer").add(Block.Items.of(List.of(ask(result), TAKE_ALONG)));
  }

  private String ask(Result.NeedsEngineer result) {
    String whole = "Whether the " + baseTitle + " can be built here";
    String parts = "timbers, joints and footings; sealed where that is required.";
    if (result.reason().finding() instanceof Finding.Refuse refuse
        && given(refuse.evidence()).orElse(null) instanceof Evidence.Seen.Amount asked) {
      String what = voice.path(result.demand()) + " of " + voice.say(asked.measure());
      return whole + " with " + what + ", and with what " + parts;
    }
    return result
        .broken()
        .map(question -> whole + ", and with what " + voice.label(question) + ", " + parts)
        .orElse(whole + ", and with what " + parts);
  }

  /** What the file gives, where it was worked into what is refused. */
  private static Optional<Evidence.Seen> given(Evidence evidence) {
    return evidence.find("given").or(() -> evidence.find("asked"));
  }

  /** What has no answer, and what stopped the candidate that came closest. */
  String broken(Result.NeedsEngineer result) {
    Reason reason = result.reason();
    String stopped = Stopped.sourced(voice, result);
    return result
        .broken()
        .map(question -> unanswered(question, reason, result.demand()) + stopped)
        .orElseGet(() -> stopped + near(reason));
  }

  private String unanswered(Question question, Reason reason, String demand) {
    String best =
        reason.finding() instanceof Finding.Reject reject
            ? " The one that comes closest is " + voice.option(question, reject.option()) + ". "
            : " ";
    String weighs =
        number(demand)
            ? " works; what weighs most is the "
            : " works; what weighs most is the choice of ";
    return "No "
        + voice.label(question)
        + weighs
        + voice.path(demand)
        + " ("
        + demand
        + ")."
        + best;
  }

  /** True for a demand that can be a little less. */
  private static boolean number(String path) {
    return Stream.of(Demand.values())
        .filter(demand -> demand.unit() != Unit.COUNT && demand.unit() != Unit.ZONE)
        .anyMatch(demand -> demand.path().equals(path));
  }

  private String near(Reason reason) {
    return reason.finding() instanceof Finding.Refuse refuse && refuse.ratio() > 1
        ? " That is " + voice.over(refuse.ratio()) + "."
        : "";
  }

  private String inside(Evidence evidence) {
    if (evidence.find("back").or(() -> evidence.find("limit")).orElse(null)
        instanceof Evidence.Seen.Amount limit) {
      return " of " + voice.say(limit.measure()) + " or less";
    }
    return evidence.find("below").orElse(null) instanceof Evidence.Seen.Amount below
        ? " enough below " + voice.say(below.measure()) + " that the timber over it fits in"
        : " as it is known at the place";
  }

  private String back(Result.NeedsEngineer result) {
    String name = voice.path(result.demand());
    if (result.reason().finding() instanceof Finding.Refuse refuse) {
      return "With "
          + name
          + inside(refuse.evidence())
          + " (--set \""
          + result.demand()
          + "=...\"), these rules cover the site.";
    }
    return (number(result.demand()) ? "A smaller " : "Another choice of ")
        + name
        + " (--set \""
        + result.demand()
        + "=...\") may bring it back inside; scantling limits tries it along every demand.";
  }
}
