package org.scantling.print;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Demand;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Proposal.Result;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** What is said where no structure fits: what breaks it, by how much, and what would help. */
final class EngineerSection {
  private static final Sayings SAYINGS = Sayings.of("no-structure");

  private final Voice voice;
  private final String baseTitle;
  private final boolean baysTold;

  EngineerSection(Told told) {
    this(
        told.voice(),
        told.proposal().baseTitle(),
        told.proposal().given().stream().anyMatch(each -> each.demand() == Demand.BAY));
  }

  /**
   * @param baysTold true where the site file lists its bays one by one
   */
  EngineerSection(Voice voice, String baseTitle, boolean baysTold) {
    this.voice = voice;
    this.baseTitle = baseTitle;
    this.baysTold = baysTold;
  }

  void write(Page page, Result.NeedsEngineer result) {
    page.paragraph(SAYINGS.say("case"));
    page.heading(SAYINGS.say("broken.heading")).paragraph(broken(result));
    page.heading(SAYINGS.say("back.heading")).paragraph(back(result));
    page.heading(SAYINGS.say("ask.heading"))
        .add(Block.Items.of(List.of(ask(result), SAYINGS.say("take-along"))));
  }

  private String ask(Result.NeedsEngineer result) {
    Map<String, String> blanks = new HashMap<>(Map.of("design", baseTitle));
    if (result.reason().finding() instanceof Finding.Refuse refuse
        && given(refuse.evidence()).orElse(null) instanceof Evidence.Seen.Amount asked) {
      blanks.put("demand", voice.path(result.demand()));
      blanks.put("asked", voice.say(asked.measure()));
    } else {
      result.broken().ifPresent(question -> blanks.put("part", voice.label(question)));
    }
    return SAYINGS.say("ask", blanks);
  }

  /** What the file gives, where it was worked into what is refused. */
  private static Optional<Evidence.Seen> given(Evidence evidence) {
    return evidence.find("given").or(() -> evidence.find("asked"));
  }

  /** What has no answer, and what stopped the candidate that came closest. */
  String broken(Result.NeedsEngineer result) {
    Reason reason = result.reason();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("stopped", Stopped.sourced(voice, result));
    blanks.put("demand", voice.path(result.demand()));
    blanks.put("path", result.demand());
    if (result.broken().isPresent()) {
      Question question = result.broken().get();
      blanks.put("part", voice.label(question));
      if (reason.finding() instanceof Finding.Reject reject) {
        blanks.put("closest", voice.option(question, reject.option()));
      }
      return SAYINGS.say(number(result.demand()) ? "broken.part" : "broken.part.choice", blanks);
    }
    if (reason.finding() instanceof Finding.Refuse refuse && refuse.ratio() > 1) {
      blanks.put("over", voice.over(refuse.ratio()));
    }
    return SAYINGS.say("broken", blanks);
  }

  /** True for a demand that can be a little less. */
  private static boolean number(String path) {
    return Stream.of(Demand.values())
        .filter(demand -> demand.unit() != Unit.COUNT && demand.unit() != Unit.ZONE)
        .anyMatch(demand -> demand.path().equals(path));
  }

  private String back(Result.NeedsEngineer result) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("demand", voice.path(result.demand()));
    blanks.put("path", result.demand());
    if (result.reason().finding() instanceof Finding.Refuse refuse) {
      return inside(refuse.evidence(), blanks);
    }
    if (baysTold && result.demand().equals(Demand.WALK_LENGTH.path())) {
      blanks.put("path", Demand.BAYS.path());
      return SAYINGS.say("back.bays", blanks);
    }
    if (result.demand().equals(Demand.ROCK_AT.path())) {
      return SAYINGS.say("back.rock", blanks);
    }
    return SAYINGS.say(number(result.demand()) ? "back.smaller" : "back.choice", blanks);
  }

  /** How far back inside is, where that can be told. */
  private String inside(Evidence evidence, Map<String, String> blanks) {
    if (evidence.find("back").or(() -> evidence.find("limit")).orElse(null)
        instanceof Evidence.Seen.Amount limit) {
      blanks.put("limit", voice.say(limit.measure()));
      return SAYINGS.say("back.limit", blanks);
    }
    if (evidence.find("below").orElse(null) instanceof Evidence.Seen.Amount below) {
      blanks.put("limit", voice.say(below.measure()));
      return SAYINGS.say("back.below", blanks);
    }
    return SAYINGS.say("back.known", blanks);
  }
}
