package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.design.Structure;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.reasons.Working;
import org.scantling.reasons.Yardstick;

/** Turns the last pass into a proposal, or into a review of a design that was given. */
final class Assembly {
  private final Job job;
  private final Pass pass;
  private final List<String> assumptions;
  private final Telling telling;
  private final Changes changes;

  Assembly(Job job, Pass pass, List<String> assumptions, Telling telling) {
    this.telling = telling;
    this.job = job;
    this.pass = pass;
    this.assumptions = assumptions;
    this.changes = new Changes(job.base());
  }

  Proposal proposal() {
    boolean done = pass.broken().isEmpty();
    boolean worked = done && telling == Telling.WHOLE;
    return new Proposal(
        job.site().title(),
        job.site().base().title(),
        done ? new Proposal.Result.Proposed(structure()) : refusal(),
        decisions(),
        worked ? pass.confirmation().checks() : List.of(),
        cautions(),
        assumptions,
        pass.yardstick(),
        worked ? new ListOnce<>(this::workings) : List.of(),
        StatedFacts.of(job.facts(), assumptions));
  }

  private List<Working> workings() {
    return new LoadWorkings(job, pass.answers()).list();
  }

  /** The same pass, in which every question that a design answers was held against the findings. */
  Review review(String designTitle, List<String> unsaid) {
    boolean done = pass.broken().isEmpty();
    return new Review(
        job.site().title(),
        designTitle,
        job.site().base().title(),
        done ? Optional.empty() : Optional.of(refusal()),
        done ? worstFirst(pass.confirmation().checks()) : List.of(),
        done ? gravestFirst(pass.shortfalls()) : List.of(),
        done ? pass.confirmation().unworked() : List.of(),
        decisions(),
        cautions(),
        assumptions,
        unsaid,
        pass.yardstick());
  }

  /** What fails first, by how far it is over its limit; then the rest, the hardest worked first. */
  private List<Checked> worstFirst(List<Checked> checks) {
    Yardstick yardstick = pass.yardstick();
    Comparator<Checked> failingFirst = Comparator.comparing(yardstick::passes);
    return checks.stream()
        .sorted(
            failingFirst.thenComparingDouble(
                each ->
                    yardstick.passes(each)
                        ? -each.check().ratio()
                        : -each.check().ratio() / yardstick.limitRatio(each)))
        .toList();
  }

  private static List<Shortfall> gravestFirst(List<Shortfall> shortfalls) {
    Comparator<Shortfall> byKind = Comparator.comparing(Shortfall::kind);
    return shortfalls.stream()
        .sorted(byKind.thenComparing(each -> -each.ratio().orElse(Double.POSITIVE_INFINITY)))
        .toList();
  }

  private Structure structure() {
    return new Parts(job, pass.answers()).structure();
  }

  private Proposal.Result.NeedsEngineer refusal() {
    Verdict.Unanswerable broken = pass.broken().orElseThrow();
    Reason closest = broken.closest();
    String demand =
        closest.finding() instanceof Finding.Refuse refuse
            ? refuse.demand()
            : new Blame(job, pass.answers(), movers(pass.answers()))
                .demand(broken.question(), closest);
    return new Proposal.Result.NeedsEngineer(
        demand, Optional.ofNullable(broken.question()), closest, broken.against());
  }

  private List<Decision> decisions() {
    Map<Answers, Movers> movers = new HashMap<>();
    List<Decision> decisions = new ArrayList<>();
    pass.verdicts()
        .forEach((question, verdict) -> decisions.add(decision(question, verdict, movers)));
    return decisions;
  }

  private Movers movers(Answers answers) {
    return new Movers(job, answers, changes.before(answers), pass::loaded);
  }

  private Decision decision(
      Question question, Verdict.Answered verdict, Map<Answers, Movers> movers) {
    Optional<Outcome> base = changes.base(question);
    boolean changed = changes.is(verdict.answer());
    Reason governing = verdict.reasons().get(0);
    boolean forced = base.isEmpty() && governing.finding() instanceof Finding.Reject;
    boolean explained = telling == Telling.WHOLE && pass.broken().isEmpty() && (changed || forced);
    return new Decision(
        question,
        base,
        Changes.outcome(verdict.answer()),
        changed,
        verdict.reasons(),
        verdict.rejected(),
        explained
            ? movers.computeIfAbsent(pass.among(question), this::movers).of(question, governing)
            : List.of());
  }

  /** Gravest first, then in the order of their rows; each text once. */
  private List<Reason> cautions() {
    Map<String, Reason> byRow = new LinkedHashMap<>();
    pass.cautions().stream()
        .sorted(Comparator.comparing(Assembly::severity).reversed())
        .forEach(each -> byRow.putIfAbsent(row(each), each));
    return new ArrayList<>(byRow.values());
  }

  private static Finding.Caution caution(Reason reason) {
    return (Finding.Caution) reason.finding();
  }

  private static org.scantling.reasons.Severity severity(Reason reason) {
    return caution(reason).severity();
  }

  private static String row(Reason reason) {
    Evidence evidence = caution(reason).evidence();
    return evidence.rows().isEmpty() ? reason.note().id() : evidence.rows().get(0).id();
  }
}
