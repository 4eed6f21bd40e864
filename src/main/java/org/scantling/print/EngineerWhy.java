package org.scantling.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.Measure;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Reason;
import org.scantling.sayings.Sayings;
import org.scantling.words.CalculationWords;
import org.scantling.words.Voice;

/**
 * Lays the working open: findings, evidence, checks, clauses, and the way back to the site file.
 */
final class EngineerWhy {
  private static final Sayings SAYINGS = Sayings.of("why");

  private final Told told;
  private final Optional<BringBack> back;
  private final Voice voice;

  /**
   * @param back what would bring the base's answer back, where that was searched
   */
  EngineerWhy(Told told, Optional<BringBack> back) {
    this.told = told;
    this.back = back;
    this.voice = told.voice();
  }

  void write(Page page, List<Decision> decisions) {
    Decision chief = decisions.get(0);
    page.title(value(chief));
    page.heading(SAYINGS.say("engineer.findings"));
    List<Block.Item> findings = new ArrayList<>();
    chief.reasons().forEach(each -> findings.add(finding(each, chief)));
    page.items(findings);
    List<Reason> rejected = new ArrayList<>(chief.rejected());
    rejected.removeIf(each -> each.finding().equals(chief.governing().finding()));
    if (!rejected.isEmpty()) {
      page.heading(SAYINGS.say("engineer.rejected"));
      page.items(rejected.stream().map(each -> finding(each, chief)).toList());
    }
    back.ifPresent(each -> each.write(page));
    List<CalculationStep> steps = CalculationTrace.behind(decisions, told.proposal(), voice);
    trace(page, steps);
    checks(page, chief);
    page.heading(SAYINGS.say("engineer.because"));
    page.add(new Block.Outline(new Chain(told.proposal(), told.words(), voice).of(chief)));
    if (decisions.size() > 1) {
      page.heading(SAYINGS.say("engineer.also"));
      page.items(decisions.stream().skip(1).map(this::other).toList());
    }
    if (!steps.isEmpty()) {
      page.heading(SAYINGS.say("engineer.symbols")).items(new SymbolList(steps, voice).items());
    }
  }

  private String value(Decision decision) {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("question", decision.question().id());
    blanks.put("now", voice.say(decision.question(), decision.proposed()));
    decision.base().ifPresent(base -> blanks.put("base", voice.say(decision.question(), base)));
    return SAYINGS.say("engineer.value", blanks);
  }

  private Block.Item finding(Reason reason, Decision decision) {
    return new Block.Item(
        (reason.governing() ? "* " : "") + reason.note().id(),
        voice.sentence(reason, decision) + evidence(reason) + " [" + source(reason) + "]");
  }

  private String source(Reason reason) {
    return reason.source().kind().word() + "; " + voice.source(reason.source());
  }

  private String evidence(Reason reason) {
    List<String> seen = new ArrayList<>();
    for (Evidence.Seen each : reason.finding().evidence().seen()) {
      seen.add(
          each.name()
              + "="
              + (each instanceof Evidence.Seen.Amount amount
                  ? voice.say(amount.measure())
                  : ((Evidence.Seen.Word) each).text()));
    }
    return seen.isEmpty() ? "" : " {" + String.join(", ", seen) + "}";
  }

  /** Every load step by step, so that it can be gone over by hand. */
  private void trace(Page page, List<CalculationStep> steps) {
    Map<String, List<Block.Item>> parts = new LinkedHashMap<>();
    for (CalculationStep each : steps) {
      parts
          .computeIfAbsent(CalculationWords.of(voice).part(each), key -> new ArrayList<>())
          .add(
              new Block.Item(
                  CalculationWords.of(voice).worked(each),
                  CalculationWords.of(voice).formula(each)
                      + " ["
                      + voice.source(each.source())
                      + "]"));
    }
    parts.forEach(
        (part, items) -> page.heading(SAYINGS.say("engineer.working", "part", part)).items(items));
  }

  private void checks(Page page, Decision decision) {
    List<Checked> checks =
        told.proposal().checks().stream()
            .filter(each -> each.role().equals(decision.question().subject()))
            .toList();
    if (checks.isEmpty() || !told.words().subjects().row(decision.question()).safety()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            decision.question().subject() + ".",
            SAYINGS.say("column.combination"),
            SAYINGS.say("column.duration"),
            SAYINGS.say("column.demand"),
            SAYINGS.say("column.capacity"),
            SAYINGS.say("column.used"),
            SAYINGS.say("column.base")));
    checks.forEach(each -> rows.add(row(each)));
    page.heading(SAYINGS.say("engineer.checks")).add(new Block.Grid(rows));
    Map<String, List<String>> clauses = new LinkedHashMap<>();
    for (Checked check : checks) {
      clauses
          .computeIfAbsent(voice.source(check.source()), key -> new ArrayList<>())
          .add(check.id());
    }
    List<Block.Item> items = new ArrayList<>();
    clauses.forEach((clause, ids) -> items.add(new Block.Item(clause, String.join(", ", ids))));
    page.heading(SAYINGS.say("engineer.clauses")).items(items);
  }

  private List<String> row(Checked checked) {
    CheckLine line = new CheckLine(voice, told.proposal().checkLimits());
    return List.of(
        checked.id().substring(checked.id().indexOf('.') + 1),
        checked.combination(),
        voice.say(Measure.ratio(checked.loadDurationFactor())),
        line.pointless(checked) ? "" : voice.say(checked.demand()),
        line.pointless(checked) ? "" : voice.say(checked.capacity()),
        line.used(checked),
        line.base(checked));
  }

  private Block.Item other(Decision decision) {
    Reason reason = decision.governing();
    return new Block.Item(
        value(decision),
        reason.note().id() + ". " + voice.sentence(reason, decision) + " [" + source(reason) + "]");
  }
}
