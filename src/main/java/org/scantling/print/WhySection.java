package org.scantling.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Priority;
import org.scantling.reasons.TimberRole;
import org.scantling.sayings.Sayings;
import org.scantling.words.CauseWords;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;

/** The reasons, along the load path: what changed, then what stayed and matters. */
final class WhySection {
  private static final Sayings SAYINGS = Sayings.of("proposal");

  private final Told told;
  private final Voice voice;
  private final Drivers drivers;
  private final Assumed assumed;

  private final List<Block.Item> changed = new ArrayList<>();
  private final List<String> following = new ArrayList<>();
  private final List<Block.Item> kept = new ArrayList<>();

  WhySection(Told told) {
    this.told = told;
    this.voice = told.voice();
    this.drivers = new Drivers(told.proposal(), told.words());
    this.assumed = new Assumed(told);
    for (SubjectRow row : told.words().subjects().rows()) {
      told.proposal().decision(row.question()).ifPresent(each -> sort(row, each));
    }
  }

  void write(Page page) {
    List<Block.Item> why = new ArrayList<>();
    why.addAll(changed);
    if (!following.isEmpty()) {
      why.add(new Block.Item(SAYINGS.say("follow"), String.join("; ", following) + "."));
    }
    if (!why.isEmpty()) {
      page.heading(SAYINGS.say("why")).items(why);
    }
    if (!kept.isEmpty()) {
      page.heading(SAYINGS.say("kept")).items(kept);
    }
    loads(page);
  }

  private void sort(SubjectRow row, Decision decision) {
    boolean novel = Novelty.is(row, decision, voice) && !assumed.is(decision);
    if (novel && row.follows()) {
      follow(decision);
    } else if (novel && !given(row, decision)) {
      changed.add(new Block.Item(Sentence.capital(row.builder()), change(row, decision)));
    } else if (!novel && row.safety()) {
      kept.add(new Block.Item(Sentence.capital(value(decision)), kept(decision)));
    }
  }

  /** What the site file gives has a section of its own. */
  private static boolean given(SubjectRow row, Decision decision) {
    return row.given() && Assumed.priority(decision).filter(Priority.ASKED::equals).isPresent();
  }

  /** A notch that has gone is told by the style. */
  private void follow(Decision decision) {
    if (!(decision.proposed() instanceof Outcome.Amount amount) || amount.measure().amount() > 0) {
      following.add(value(decision));
    }
  }

  private String value(Decision decision) {
    return voice.label(decision.question()) + " " + proposed(decision);
  }

  private String proposed(Decision decision) {
    return voice.proposed(decision);
  }

  private String change(SubjectRow row, Decision decision) {
    Map<String, String> blanks = new HashMap<>(causes(decision));
    blanks.put("now", proposed(decision));
    blanks.putAll(
        decision
            .base()
            .map(base -> Map.of("was", voice.say(decision.question(), base)))
            .orElseGet(() -> beside(row, decision)));
    blanks.put("reason", reason(decision));
    return SAYINGS.say("changed", blanks);
  }

  /** What is said of a thing that the base does not speak of. */
  private static Map<String, String> beside(SubjectRow row, Decision decision) {
    if (TimberRole.of(decision.question()).filter(it -> it.size() != row.question()).isPresent()) {
      return Map.of();
    }
    return Map.of(stronger(row, decision) ? "stronger" : "new", "");
  }

  /** A base has no record of its joints; one that a check drove past the usual is stronger. */
  private static boolean stronger(SubjectRow row, Decision decision) {
    return row.usual() && decision.governing().finding() instanceof Finding.Reject;
  }

  private Map<String, String> causes(Decision decision) {
    List<String> causes =
        drivers.of(decision).stream()
            .map(each -> CauseWords.of(voice).cause(each, drivers.worked(decision)))
            .toList();
    String list = Sentence.list(causes);
    return switch (causes.size()) {
      case 0 -> Map.of();
      case 1 -> Map.of("cause", list);
      default -> Map.of(drivers.ranked(decision) ? "ranked" : "causes", list);
    };
  }

  private String reason(Decision decision) {
    String reason = Sourced.sentence(voice, decision.governing(), decision);
    return Unmet.wish(told, decision)
        .map(wish -> voice.sentence(wish, decision) + " " + reason)
        .orElse(reason);
  }

  /** The check that is worked hardest of those worked out, where it has any; else what keeps it. */
  private String kept(Decision decision) {
    return told.proposal().checks().stream()
        .filter(each -> each.role().equals(decision.question().subject()))
        .filter(each -> !voice.prescribed(each.id()))
        .max(Comparator.comparingDouble(each -> each.check().ratio()))
        .map(this::worked)
        .orElseGet(() -> reason(decision));
  }

  private String worked(Checked checked) {
    return SAYINGS.say(
        "kept.tightest",
        "check",
        voice.check(checked.id()),
        "used",
        voice.say(Measure.ratio(checked.check().ratio())),
        "source",
        voice.source(checked.source()));
  }

  private void loads(Page page) {
    List<String> loads = new ArrayList<>();
    for (SubjectRow row : told.words().subjects().rows()) {
      if (row.load()) {
        told.proposal().decision(row.question()).ifPresent(each -> loads.add(value(each)));
      }
    }
    if (!loads.isEmpty()) {
      page.paragraph(SAYINGS.say("loads", "loads", String.join("; ", loads)));
    }
  }
}
