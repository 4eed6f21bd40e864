package org.scantling.print;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.words.Voice;

/** The answer, in a few sentences. */
final class Opening {
  private static final Sayings SAYINGS = Sayings.of("proposal");
  private static final double ROUNDED_IN = 1.0 / 8;

  private final Told told;
  private final Proposal proposal;
  private final Voice voice;

  Opening(Told told) {
    this.told = told;
    this.proposal = told.proposal();
    this.voice = told.voice();
  }

  void write(Page page, Structure structure, List<Compared> lines) {
    write(page, structure, lines, Map.of("table", ""));
  }

  /** The same where no table follows. */
  void writeAlone(Page page, Structure structure, List<Compared> lines) {
    write(page, structure, lines, Map.of());
  }

  private void write(
      Page page, Structure structure, List<Compared> lines, Map<String, String> table) {
    page.paragraph(whole(structure.geometry(), structure.top()));
    page.paragraph(
        changes(lines.stream().filter(each -> each.novel() && !each.place()).toList(), table));
    page.paragraph(checks());
  }

  private String whole(Geometry geometry, TopLine top) {
    Map<String, String> blanks = new HashMap<>(new Headroom(told).blanks(top));
    blanks.put("design", proposal.baseTitle());
    blanks.put("length", inches(geometry.lengthIn()));
    blanks.put("bays", Integer.toString(geometry.plan().bays()));
    blanks.put("width", clearWidth(geometry));
    return SAYINGS.say("whole", blanks);
  }

  /** As decided, where the posts leave just that. */
  private String clearWidth(Geometry geometry) {
    return proposal
        .decision(Question.CLEAR_WIDTH)
        .map(decision -> ((Outcome.Amount) decision.proposed()).measure())
        .filter(decided -> Math.abs(decided.amount() - geometry.clearWidthIn()) <= ROUNDED_IN)
        .map(voice::say)
        .orElseGet(() -> inches(geometry.clearWidthIn()));
  }

  /** Everything that is not as in the base is counted; what carries is named. */
  private String changes(List<Compared> novel, Map<String, String> table) {
    if (novel.isEmpty()) {
      return SAYINGS.say("changes.none");
    }
    Map<String, String> blanks = new HashMap<>(Map.of("count", Integer.toString(novel.size())));
    List<Compared> lead = novel.stream().filter(Compared::lead).toList();
    if (lead.isEmpty()) {
      blanks.putAll(table);
      return SAYINGS.say("changes.small", blanks);
    }
    blanks.put("changes", lead.stream().map(Opening::change).collect(Collectors.joining("; ")));
    if (novel.size() > lead.size()) {
      blanks.put("rest", Integer.toString(novel.size() - lead.size()));
      blanks.putAll(table);
    }
    return SAYINGS.say("changes", blanks);
  }

  private static String change(Compared line) {
    if (line.now().isEmpty()) {
      return SAYINGS.say("change.gone", "name", line.name());
    }
    if (line.usual()) {
      // A base does not tell its joints, so nothing can be said to have changed in them.
      return SAYINGS.say("change.stronger", "name", line.name(), "now", line.now());
    }
    return line.hadNone()
        ? added(line)
        : SAYINGS.say("change", "now", Compared.said(line.name(), line.now()), "then", line.then());
  }

  /** Knee braces are not told as braces first. */
  private static String added(Compared line) {
    String kind = line.now().split(", ")[0];
    if (!kind.endsWith(line.name())) {
      return SAYINGS.say("change.added", "name", line.name(), "how", line.now());
    }
    return kind.equals(line.now())
        ? SAYINGS.say("change.added", "name", kind)
        : SAYINGS.say("change.added", "name", kind, "how", line.now().substring(kind.length() + 2));
  }

  private String checks() {
    if (proposal.checks().stream().anyMatch(proposal.checkLimits()::byRecord)) {
      return new PassingChecks(voice, proposal.checkLimits()).sentence(proposal.checks());
    }
    List<String> guessed = new Assumed(told).place();
    Map<String, String> blanks = new HashMap<>();
    blanks.put("checks", Integer.toString(proposal.checks().size()));
    blanks.put("tightest", tightest());
    blanks.put("guessed", Sentence.list(guessed));
    blanks.put("count", Integer.toString(guessed.size()));
    return SAYINGS.say(guessed.isEmpty() ? "checks" : "checks.guessed", blanks);
  }

  /** A distance that a standard prescribes is no measure of how hard anything works. */
  private String tightest() {
    return proposal.checks().stream()
        .filter(each -> !voice.prescribed(each.id()))
        .max(Comparator.comparingDouble(each -> each.check().ratio()))
        .map(this::tightest)
        .orElseGet(() -> SAYINGS.say("tightest.none"));
  }

  private String tightest(Checked check) {
    CheckLine line = new CheckLine(voice, proposal.checkLimits());
    Map<String, String> blanks = new HashMap<>(line.beside(check));
    blanks.put("used", voice.say(Measure.ratio(check.check().ratio())));
    blanks.put("check", line.name(check));
    // A hole dug to just the depth that a check asks for is no alarm.
    proposal.decisions().stream()
        .filter(each -> each.governing().because().contains(check.id()))
        .filter(each -> each.proposed() instanceof Outcome.Amount)
        .map(Decision::question)
        .findFirst()
        .ifPresent(question -> blanks.put("exactly", voice.label(question)));
    return SAYINGS.say("tightest", blanks);
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
