package org.scantling.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Reason;
import org.scantling.sayings.Sayings;
import org.scantling.words.AnswerWords;
import org.scantling.words.CauseWords;
import org.scantling.words.Voice;

/** Explains to the builder: the number, the rule, the source, and what stopped the next smaller. */
final class BuilderWhy {
  private static final Sayings SAYINGS = Sayings.of("why");
  private static final int MOST_TRIED = 4;
  private static final double JUST_MET = 1 - 1e-6;

  private final Told told;
  private final Optional<BringBack> back;
  private final Voice voice;
  private final CheckLine line;
  private final Drivers drivers;

  /**
   * @param back what would bring the base's answer back, where that was searched
   */
  BuilderWhy(Told told, Optional<BringBack> back) {
    this.told = told;
    this.back = back;
    this.voice = told.voice();
    this.line = new CheckLine(voice, told.proposal().checkLimits());
    this.drivers = new Drivers(told.proposal(), told.words());
  }

  void write(Page page, List<Decision> decisions) {
    Decision chief = decisions.get(0);
    page.title(Sentence.capital(voice.label(chief.question())));
    page.paragraph(answer(chief));
    causes(page, chief);
    weighed(page, chief);
    tried(page, chief);
    back.ifPresent(each -> each.write(page));
    tightest(page, chief);
    if (decisions.size() > 1) {
      page.heading(SAYINGS.say("also"));
      page.items(decisions.stream().skip(1).map(this::item).toList());
    }
  }

  /** What it is and was, what was asked for and had to give way, and why. */
  private String answer(Decision decision) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("now", Sentence.capital(described(decision, decision.proposed())));
    decision.base().ifPresent(base -> blanks.putAll(beside(decision, base)));
    Unmet.wish(told, decision).ifPresent(wish -> blanks.put("asked", reason(wish, decision)));
    blanks.put("reason", reason(decision.governing(), decision));
    return SAYINGS.say("answer", blanks);
  }

  private Map<String, String> beside(Decision decision, Outcome base) {
    return decision.changed() ? Map.of("then", described(decision, base)) : Map.of("kept", "");
  }

  private String described(Decision decision, Outcome outcome) {
    return AnswerWords.of(voice).described(decision.question(), outcome);
  }

  private String reason(Reason reason, Decision decision) {
    return voice.sentence(reason, decision)
        + " ["
        + reason.note().id()
        + "; "
        + voice.source(reason.source())
        + "]";
  }

  private void causes(Page page, Decision decision) {
    List<String> causes =
        drivers.of(decision).stream()
            .map(each -> CauseWords.of(voice).driver(each, drivers.worked(decision)))
            .toList();
    if (decision.changed() && !causes.isEmpty()) {
      String saying =
          causes.size() == 1
              ? "different.one"
              : drivers.ranked(decision) ? "different.ranked" : "different";
      page.paragraph(SAYINGS.say(saying, "causes", String.join("; ", causes)));
    }
  }

  /** Bounds and wishes that did not set the answer. */
  private void weighed(Page page, Decision decision) {
    List<Block.Item> items =
        decision.reasons().stream()
            .filter(each -> !each.governing())
            .filter(each -> Unmet.wish(told, decision).filter(each::equals).isEmpty())
            .map(each -> new Block.Item("", reason(each, decision)))
            .toList();
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("weighed")).items(items);
    }
  }

  /** The options next below the answer, the nearest first. */
  private void tried(Page page, Decision decision) {
    List<Reason> rejected = new ArrayList<>(decision.rejected());
    rejected.removeIf(each -> each.finding().equals(decision.governing().finding()));
    Collections.reverse(rejected);
    if (!rejected.isEmpty()) {
      page.heading(SAYINGS.say("rejected"));
      page.items(
          rejected.stream()
              .limit(MOST_TRIED)
              .map(each -> new Block.Item("", reason(each, decision)))
              .toList());
    }
  }

  private void tightest(Page page, Decision decision) {
    if (!told.words().subjects().row(decision.question()).safety()) {
      return;
    }
    List<Checked> checks =
        told.proposal().checks().stream()
            .filter(each -> each.role().equals(decision.question().subject()))
            .sorted(Comparator.comparingDouble((Checked each) -> each.check().ratio()).reversed())
            .toList();
    List<Block.Item> items = new ArrayList<>();
    checks.stream()
        .filter(each -> !voice.prescribed(each.id()))
        .limit(MOST_TRIED)
        .forEach(each -> items.add(worked(each)));
    checks.stream()
        .filter(each -> voice.prescribed(each.id()))
        .forEach(each -> items.add(prescribed(each)));
    if (!items.isEmpty()) {
      page.heading(SAYINGS.say("limits")).items(items);
    }
  }

  private Block.Item worked(Checked checked) {
    Map<String, String> blanks = new HashMap<>(line.beside(checked));
    blanks.putAll(amounts(checked));
    if (line.asked(checked).isEmpty()) {
      blanks.remove("asked");
    }
    return new Block.Item(line.used(checked), SAYINGS.say("check", blanks));
  }

  private Map<String, String> amounts(Checked checked) {
    return Map.of(
        "check", voice.check(checked.id()),
        "asked", line.asked(checked),
        "there", line.there(checked),
        "source", voice.source(checked.source()));
  }

  /** A limit that is just met is no alarm: the standard says how far one may go. */
  private Block.Item prescribed(Checked checked) {
    boolean exactly = checked.check().ratio() > JUST_MET;
    return new Block.Item(
        SAYINGS.say("prescribed.lead"),
        SAYINGS.say(exactly ? "prescribed.exactly" : "prescribed", amounts(checked)));
  }

  private Block.Item item(Decision decision) {
    return new Block.Item(Sentence.capital(voice.label(decision.question())), answer(decision));
  }
}
