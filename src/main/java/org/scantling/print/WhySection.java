package org.scantling.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Reason;
import org.scantling.reasons.TimberRole;
import org.scantling.words.SubjectRow;
import org.scantling.words.Voice;

/** The reasons, along the load path: what changed, then what stayed and matters. */
final class WhySection {
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
      why.add(new Block.Item("These follow", String.join("; ", following) + "."));
    }
    if (!why.isEmpty()) {
      page.heading("Why").items(why);
    }
    if (!kept.isEmpty()) {
      page.heading("Kept, and checked again").items(kept);
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
    return voice.say(decision.question(), decision.proposed());
  }

  private String change(SubjectRow row, Decision decision) {
    String was =
        decision
            .base()
            .map(base -> ", was " + voice.say(decision.question(), base))
            .orElse(beside(row, decision));
    return proposed(decision) + was + ". " + reason(decision) + causes(decision);
  }

  /** What is said of a thing that the base does not speak of. */
  private static String beside(SubjectRow row, Decision decision) {
    if (TimberRole.of(decision.question()).filter(it -> it.size() != row.question()).isPresent()) {
      return "";
    }
    return stronger(row, decision) ? ", stronger than usual" : ", new here";
  }

  /** A base has no record of its joints; one that a check drove past the usual is stronger. */
  private static boolean stronger(SubjectRow row, Decision decision) {
    return row.usual() && decision.governing().finding() instanceof Finding.Reject;
  }

  private String causes(Decision decision) {
    List<String> causes =
        drivers.of(decision).stream()
            .map(each -> voice.cause(each, drivers.worked(decision)))
            .toList();
    String order = drivers.ranked(decision) ? ", largest effect first: " : ": ";
    return causes.isEmpty()
        ? ""
        : (causes.size() == 1 ? " Because this changed: " : " Because these changed" + order)
            + Sentence.list(causes)
            + ".";
  }

  private String reason(Decision decision) {
    Reason reason = decision.governing();
    return Unmet.wish(told, decision).map(wish -> voice.sentence(wish, decision) + " ").orElse("")
        + voice.sentence(reason, decision)
        + " ("
        + voice.source(reason.source())
        + ")";
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
    return "tightest on "
        + voice.check(checked.id())
        + ", "
        + voice.say(Measure.ratio(checked.check().ratio()))
        + " used ("
        + voice.source(checked.source())
        + ")";
  }

  private void loads(Page page) {
    List<String> loads = new ArrayList<>();
    for (SubjectRow row : told.words().subjects().rows()) {
      if (row.load()) {
        told.proposal().decision(row.question()).ifPresent(each -> loads.add(value(each)));
      }
    }
    if (!loads.isEmpty()) {
      page.paragraph("Loads behind the checks: " + String.join("; ", loads) + ".");
    }
  }
}
