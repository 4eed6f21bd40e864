package org.scantling.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Reason;
import org.scantling.words.Voice;

/** Explains to the builder: the number, the rule, the source, and what stopped the next smaller. */
final class BuilderWhy {
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
    page.paragraph(answer(chief) + asked(chief) + " " + reason(chief.governing(), chief));
    causes(page, chief);
    weighed(page, chief);
    tried(page, chief);
    back.ifPresent(each -> each.write(page));
    tightest(page, chief);
    if (decisions.size() > 1) {
      page.heading("Also decided about it");
      page.items(decisions.stream().skip(1).map(this::item).toList());
    }
  }

  private String answer(Decision decision) {
    String now = voice.described(decision.question(), decision.proposed());
    return Sentence.capital(now)
        + decision
            .base()
            .map(base -> base(decision, voice.described(decision.question(), base)))
            .orElse(".");
  }

  private static String base(Decision decision, String then) {
    return decision.changed() ? "; the base has " + then + "." : ", as in the base.";
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
            .map(each -> voice.driver(each, drivers.worked(decision)))
            .toList();
    if (decision.changed() && !causes.isEmpty()) {
      String order = drivers.ranked(decision) ? ", largest effect first: " : ": ";
      String lead =
          causes.size() == 1
              ? "Because this is different here: "
              : "Because these are different here" + order;
      page.paragraph(lead + String.join("; ", causes) + ".");
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
      page.heading("Also weighed").items(items);
    }
  }

  /** The options next below the answer, the nearest first. */
  private void tried(Page page, Decision decision) {
    List<Reason> rejected = new ArrayList<>(decision.rejected());
    rejected.removeIf(each -> each.finding().equals(decision.governing().finding()));
    Collections.reverse(rejected);
    if (!rejected.isEmpty()) {
      page.heading("Could not be");
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
      page.heading("How close it is to its limits now").items(items);
    }
  }

  private Block.Item worked(Checked checked) {
    String asked = line.asked(checked);
    String amounts = asked.isEmpty() ? "" : ", " + asked + " of " + line.there(checked);
    return new Block.Item(
        line.used(checked),
        voice.check(checked.id())
            + amounts
            + " ("
            + voice.source(checked.source())
            + ")"
            + line.besideBase(checked));
  }

  /** A limit that is just met is no alarm: the standard says how far one may go. */
  private Block.Item prescribed(Checked checked) {
    String met =
        checked.check().ratio() > JUST_MET
            ? "exactly at the limit, " + line.there(checked)
            : line.asked(checked) + " of " + line.there(checked);
    return new Block.Item(
        "Prescribed",
        voice.check(checked.id()) + ": " + met + " (" + voice.source(checked.source()) + ")");
  }

  private Block.Item item(Decision decision) {
    return new Block.Item(
        Sentence.capital(voice.label(decision.question())),
        answer(decision) + asked(decision) + " " + reason(decision.governing(), decision));
  }

  /** What was asked for and had to give way. */
  private String asked(Decision decision) {
    return Unmet.wish(told, decision).map(wish -> " " + reason(wish, decision)).orElse("");
  }
}
