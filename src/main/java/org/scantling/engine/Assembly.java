package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.Comparator;
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

/** Turns the last pass into a proposal. */
final class Assembly {
  private final Job job;
  private final Pass pass;
  private final List<String> assumptions;
  private final Changes changes;

  Assembly(Job job, Pass pass, List<String> assumptions) {
    this.job = job;
    this.pass = pass;
    this.assumptions = assumptions;
    this.changes = new Changes(job.base());
  }

  Proposal proposal() {
    boolean done = pass.broken().isEmpty();
    return new Proposal(
        job.site().title(),
        job.site().base().title(),
        done ? new Proposal.Result.Proposed(structure()) : refusal(),
        decisions(),
        done ? checks() : List.of(),
        cautions(),
        assumptions,
        StatedFacts.of(job.facts(), assumptions));
  }

  private Structure structure() {
    return new Parts(job, pass.answers()).structure();
  }

  private Proposal.Result refusal() {
    Verdict.Unanswerable broken = pass.broken().orElseThrow();
    Reason closest = broken.closest();
    String demand =
        closest.finding() instanceof Finding.Refuse refuse
            ? refuse.demand()
            : new Blame(job, pass.answers(), movers()).demand(broken.question(), closest);
    return new Proposal.Result.NeedsEngineer(
        demand, Optional.ofNullable(broken.question()), closest);
  }

  private List<Decision> decisions() {
    Movers movers = movers();
    List<Decision> decisions = new ArrayList<>();
    pass.verdicts()
        .forEach((question, verdict) -> decisions.add(decision(question, verdict, movers)));
    return decisions;
  }

  private Movers movers() {
    return new Movers(job, pass.answers(), changes.before(pass.answers()), pass::loaded);
  }

  private Decision decision(Question question, Verdict.Answered verdict, Movers movers) {
    Optional<Outcome> base = changes.base(question);
    boolean changed = changes.is(verdict.answer());
    Reason governing = verdict.reasons().get(0);
    boolean forced = base.isEmpty() && governing.finding() instanceof Finding.Reject;
    boolean explained = pass.broken().isEmpty() && (changed || forced);
    return new Decision(
        question,
        base,
        Changes.outcome(verdict.answer()),
        changed,
        verdict.reasons(),
        verdict.rejected(),
        explained ? movers.of(question, governing) : List.of());
  }

  private List<Checked> checks() {
    Bench bench = new Bench(job.tables(), job.stock(), pass.answers());
    List<Checked> checks = new ArrayList<>();
    for (Question question : List.of(CROSSBEAM_SIZE, HEADER_SIZE, POST_SIZE)) {
      checks.addAll(bench.checks(question, pass.answers().option(question)));
    }
    if (bench.braced().isPresent()) {
      checks.addAll(bench.checks(BRACE_SIZE, pass.answers().option(BRACE_SIZE)));
    }
    checks.addAll(
        bench.footingChecks(
            pass.answers().number(FOOTING_DEPTH), pass.answers().number(HOLE_DIAMETER)));
    JointBench joints = new JointBench(bench);
    for (Question question : List.of(CROSSBEAM_JOINT, HEADER_JOINT, BRACE_JOINT)) {
      if (pass.verdicts().containsKey(question)) {
        checks.addAll(joints.checks(job.tables().joints().row(pass.answers().option(question))));
      }
    }
    return worst(checks);
  }

  /** One entry a check: several joints may ask for the same distance. */
  private static List<Checked> worst(List<Checked> checks) {
    Map<String, Checked> byId = new LinkedHashMap<>();
    checks.forEach(
        each ->
            byId.merge(
                each.id(),
                each,
                (one, other) -> one.check().ratio() >= other.check().ratio() ? one : other));
    return new ArrayList<>(byId.values());
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
