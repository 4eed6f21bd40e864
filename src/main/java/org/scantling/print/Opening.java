package org.scantling.print;

import java.util.Comparator;
import java.util.List;
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
import org.scantling.words.Voice;

/** The answer, in a few sentences. */
final class Opening {
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
    write(page, structure, lines, ", in the table below");
  }

  /** The same where no table follows. */
  void writeAlone(Page page, Structure structure, List<Compared> lines) {
    write(page, structure, lines, "");
  }

  private void write(Page page, Structure structure, List<Compared> lines, String where) {
    page.paragraph(whole(structure.geometry(), structure.top()));
    page.paragraph(
        changes(lines.stream().filter(each -> each.novel() && !each.place()).toList(), where));
    page.paragraph(checks());
  }

  private String whole(Geometry geometry, TopLine top) {
    Headroom headroom = new Headroom(told);
    return "Build the "
        + proposal.baseTitle()
        + " "
        + inches(geometry.lengthIn())
        + " long in "
        + bays(geometry.plan().bays())
        + ", "
        + clearWidth(geometry)
        + " clear between the posts and "
        + headroom.said(top)
        + " clear overhead in the walk"
        + headroom.slope()
        + ".";
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

  private static String bays(int bays) {
    return bays == 1 ? "one bay" : bays + " bays";
  }

  /** Everything that is not as in the base is counted; what carries is named. */
  private String changes(List<Compared> novel, String where) {
    if (novel.isEmpty()) {
      return "Nothing changes: every size, every hole and every joint stays as in the base.";
    }
    List<Compared> lead = novel.stream().filter(Compared::lead).toList();
    String count = novel.size() == 1 ? "One thing changes" : novel.size() + " things change";
    if (lead.isEmpty()) {
      return count + where + "; every timber size, hole and joint stays as in the base.";
    }
    int rest = novel.size() - lead.size();
    return count
        + ": "
        + lead.stream().map(Opening::change).collect(Collectors.joining("; "))
        + (rest == 0 ? "." : "; and " + rest + " more" + where + ".");
  }

  private static String change(Compared line) {
    if (line.now().isEmpty()) {
      return "no " + line.name() + " any more";
    }
    if (line.usual()) {
      // A base does not tell its joints, so nothing can be said to have changed in them.
      return line.name() + " stronger than usual, " + line.now();
    }
    return line.then().isEmpty() || line.then().equals("none")
        ? added(line)
        : Compared.said(line.name(), line.now()) + " (was " + line.then() + ")";
  }

  /** Knee braces are not told as braces first. */
  private static String added(Compared line) {
    String kind = line.now().split(", ")[0];
    return kind.endsWith(line.name())
        ? kind + " added" + line.now().substring(kind.length())
        : line.name() + " added, " + line.now();
  }

  private String checks() {
    String every = "All " + proposal.checks().size() + " checks";
    if (proposal.checks().stream().anyMatch(proposal.checkLimits()::byRecord)) {
      return new PassingChecks(voice, proposal.checkLimits()).sentence(every, proposal.checks());
    }
    String all = every + " pass";
    List<String> guessed = new Assumed(told).place();
    if (guessed.isEmpty()) {
      return all + "; " + hardest();
    }
    return all
        + ", but against a first estimate: "
        + Sentence.list(guessed)
        + (guessed.size() == 1 ? " is" : " are")
        + " assumed, not given. Ask for the local values before you build. Against the estimate, "
        + hardest();
  }

  /** A distance that a standard prescribes is no measure of how hard anything works. */
  private String hardest() {
    return proposal.checks().stream()
        .filter(each -> !voice.prescribed(each.id()))
        .max(Comparator.comparingDouble(each -> each.check().ratio()))
        .map(this::hardest)
        .orElse("none of them was worked out.");
  }

  private String hardest(Checked check) {
    return "the tightest is at "
        + voice.say(Measure.ratio(check.check().ratio()))
        + " of its limit ("
        + check.role()
        + ": "
        + voice.check(check.id())
        + chosenFor(check)
        + new CheckLine(voice, proposal.checkLimits()).besideBase(check)
        + ").";
  }

  /** A hole dug to just the depth that a check asks for is no alarm. */
  private String chosenFor(Checked check) {
    return proposal.decisions().stream()
        .filter(each -> each.governing().because().contains(check.id()))
        .filter(each -> each.proposed() instanceof Outcome.Amount)
        .map(Decision::question)
        .findFirst()
        .map(this::chosen)
        .orElse("");
  }

  private String chosen(Question question) {
    return "; the " + voice.label(question) + " is chosen to meet exactly that";
  }

  private String inches(double amount) {
    return voice.say(Measure.inches(amount));
  }
}
