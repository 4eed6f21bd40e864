package org.scantling.engine;

import static org.scantling.reasons.Question.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.answers.Answers;
import org.scantling.answers.Changes;
import org.scantling.causes.Attribution;
import org.scantling.causes.InfeasibleDemand;
import org.scantling.design.Structure;
import org.scantling.facts.Parts;
import org.scantling.facts.StatedFacts;
import org.scantling.problem.DesignProblem;
import org.scantling.problem.Detail;
import org.scantling.reasons.CalculationStep;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Decision;
import org.scantling.reasons.Evidence;
import org.scantling.reasons.Finding;
import org.scantling.reasons.MoreWorking;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Review;
import org.scantling.reasons.Shortfall;
import org.scantling.rulebase.RuleBaseFault;
import org.scantling.workings.BeamDiagrams;
import org.scantling.workings.LoadTrace;
import org.scantling.workings.TriedSizes;

/** Turns the last pass into a proposal, or into a review of a design that was given. */
final class Assembly {
  private final DesignProblem problem;
  private final Pass pass;
  private final List<String> assumptions;
  private final Detail detail;
  private final Changes changes;

  Assembly(DesignProblem problem, Pass pass, List<String> assumptions, Detail detail) {
    this.detail = detail;
    this.problem = problem;
    this.pass = pass;
    this.assumptions = assumptions;
    this.changes = new Changes(problem.base());
  }

  Proposal proposal() {
    boolean done = pass.broken().isEmpty();
    boolean worked = done && detail != Detail.ANSWERS;
    boolean traced = done && detail == Detail.FULL;
    Proposal proposal =
        new Proposal(
            problem.site().title(),
            problem.site().base().title(),
            done ? new Proposal.Result.Proposed(sound()) : refusal(),
            decisions(),
            worked ? pass.confirmation().checks() : List.of(),
            cautions(),
            assumptions,
            pass.checkLimits(),
            traced ? new LazyList<>(this::trace) : List.of(),
            StatedFacts.of(problem.facts(), assumptions));
    return traced ? proposal.with(more(proposal.decisions())) : proposal;
  }

  private List<CalculationStep> trace() {
    return new LoadTrace(problem, pass.answers(), this::governedBy).list();
  }

  private MoreWorking more(List<Decision> decisions) {
    return new MoreWorking(
        new LazyList<>(() -> new BeamDiagrams(problem, pass.answers()).list()),
        new LazyList<>(() -> new TriedSizes(problem, pass.answers(), pass::among).of(decisions)));
  }

  /** True where what set the answer to a question read that. */
  private boolean governedBy(Question question, String reference) {
    Resolution.Answered resolution = pass.resolutions().get(question);
    return resolution != null && resolution.reasons().get(0).because().contains(reference);
  }

  /** The same pass, in which every question that a design answers was held against the findings. */
  Review review(String designTitle, List<String> unsaid) {
    boolean done = pass.broken().isEmpty();
    return new Review(
        problem.site().title(),
        designTitle,
        problem.site().base().title(),
        done ? Optional.empty() : Optional.of(refusal()),
        done ? worstFirst(pass.confirmation().checks()) : List.of(),
        done ? gravestFirst(pass.shortfalls()) : List.of(),
        done ? pass.confirmation().unworked() : List.of(),
        decisions(),
        cautions(),
        assumptions,
        unsaid,
        pass.checkLimits());
  }

  /** What fails first, by how far it is over its limit; then the rest, the hardest worked first. */
  private List<Checked> worstFirst(List<Checked> checks) {
    CheckLimits checkLimits = pass.checkLimits();
    Comparator<Checked> failingFirst = Comparator.comparing(checkLimits::passes);
    return checks.stream()
        .sorted(
            failingFirst.thenComparingDouble(
                each ->
                    checkLimits.passes(each)
                        ? -each.check().ratio()
                        : -each.check().ratio() / checkLimits.limitRatio(each)))
        .toList();
  }

  private static List<Shortfall> gravestFirst(List<Shortfall> shortfalls) {
    Comparator<Shortfall> byKind = Comparator.comparing(Shortfall::kind);
    return shortfalls.stream()
        .sorted(byKind.thenComparing(each -> -each.ratio().orElse(Double.POSITIVE_INFINITY)))
        .toList();
  }

  /**
   * The structure, which nobody may be told where it does not pass.
   *
   * @throws RuleBaseFault where a check is over its limit: the rules took it for one that passes
   */
  private Structure sound() {
    for (Checked each : pass.confirmation().checks()) {
      if (!pass.checkLimits().passes(each)) {
        throw new RuleBaseFault(
            "what is proposed is over the limit of " + each.id() + ": " + each.check().ratio());
      }
    }
    return structure();
  }

  private Structure structure() {
    return new Parts(problem, pass.answers()).structure();
  }

  private Proposal.Result.NeedsEngineer refusal() {
    Resolution.Unanswerable broken = pass.broken().orElseThrow();
    Reason closest = broken.closest();
    String demand =
        closest.finding() instanceof Finding.Refuse refuse
            ? refuse.demand()
            : new InfeasibleDemand(problem, pass.answers(), attribution(pass.answers()))
                .demand(broken.asked(), closest);
    return new Proposal.Result.NeedsEngineer(demand, broken.question(), closest, broken.against());
  }

  private List<Decision> decisions() {
    Map<Answers, Attribution> attributions = new HashMap<>();
    List<Decision> decisions = new ArrayList<>();
    pass.resolutions()
        .forEach(
            (question, resolution) -> decisions.add(decision(question, resolution, attributions)));
    return decisions;
  }

  private Attribution attribution(Answers answers) {
    return new Attribution(problem, answers, changes.before(answers), pass::loaded);
  }

  private Decision decision(
      Question question, Resolution.Answered resolution, Map<Answers, Attribution> attributions) {
    Optional<Outcome> base = changes.base(question);
    boolean changed = changes.is(resolution.answer());
    Reason governing = resolution.reasons().get(0);
    boolean forced = base.isEmpty() && governing.finding() instanceof Finding.Reject;
    boolean explained = detail == Detail.FULL && pass.broken().isEmpty() && (changed || forced);
    return new Decision(
        question,
        base,
        Changes.outcome(resolution.answer()),
        changed,
        resolution.reasons(),
        resolution.rejected(),
        explained
            ? attributions
                .computeIfAbsent(pass.among(question), this::attribution)
                .of(question, governing)
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
