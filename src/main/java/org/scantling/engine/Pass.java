package org.scantling.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.scantling.answers.Answers;
import org.scantling.answers.Rounding;
import org.scantling.facts.Confirmation;
import org.scantling.facts.PhaseFacts;
import org.scantling.problem.DesignProblem;
import org.scantling.reasons.Answer;
import org.scantling.reasons.CheckLimits;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Relied;
import org.scantling.reasons.Shortfall;
import org.scantling.reasons.TimberRole;
import org.scantling.rulebase.Fired;

/**
 * One run through all phases, starting from the answers of the run before. What a design fixes is
 * not answered but held against the findings.
 */
final class Pass {
  private final DesignProblem problem;
  private final PhaseRunner runner;
  private final Optional<Pass> before;
  private final List<Fact> tried;
  private final Map<Question, Resolution.Answered> resolutions = new EnumMap<>(Question.class);
  private final Map<Question, List<Shortfall>> held = new EnumMap<>(Question.class);
  private final List<Reason> cautions = new ArrayList<>();
  private final Easing easing;
  private final Map<Question, QuestionFindings> collected = new EnumMap<>(Question.class);
  private final Map<Question, Answers> asked = new EnumMap<>(Question.class);
  private final Map<Question, Answers> stopped = new EnumMap<>(Question.class);
  private final Map<Question, String> floors;
  private Answers answers;
  private Optional<Resolution.Unanswerable> broken = Optional.empty();
  private Optional<Reason> refusal = Optional.empty();

  /**
   * @param before the run before, below whose sizes this one does not go; none for the first
   * @param tried what came of options that were tried before
   */
  Pass(
      DesignProblem problem,
      PhaseRunner runner,
      Answers start,
      Optional<Pass> before,
      List<Fact> tried) {
    this.problem = problem;
    this.runner = runner;
    this.answers = start;
    this.before = before;
    this.tried = tried;
    this.easing = new Easing(problem);
    this.floors = before.map(Pass::floors).orElse(Map.of());
  }

  /** Sizes only grow from pass to pass, so that the passes end. */
  private static Map<Question, String> floors(Pass before) {
    Map<Question, String> floors = new EnumMap<>(Question.class);
    before.resolutions.forEach(
        (question, answered) -> {
          if (question.attribute().equals("size")) {
            floors.put(question, answered.answer().option());
          }
        });
    return floors;
  }

  /** Answers every question, as far as there are answers. */
  void run() {
    for (Phase phase : Phase.values()) {
      if (phase.answers() && broken().isEmpty()) {
        run(phase);
      }
    }
  }

  /** The same as far as a phase. */
  void runTo(Phase last) {
    for (Phase phase : Phase.values()) {
      if (phase.compareTo(last) <= 0 && broken().isEmpty()) {
        run(phase);
      }
    }
  }

  /**
   * Collects the cautions, which answer nothing: for the pass in which nothing changes any more,
   * and for somebody who reads them.
   */
  void caution() {
    if (broken().isEmpty()) {
      run(Phase.CAUTIONS);
    } else {
      cautionOfAnyWork();
    }
  }

  Answers answers() {
    return answers;
  }

  /**
   * The question that has no answer, if there is one; a refusal counts as one about the whole site.
   */
  Optional<Resolution.Unanswerable> broken() {
    return refusal
        .map(reason -> new Resolution.Unanswerable(Optional.empty(), reason, List.of()))
        .or(() -> broken);
  }

  /** True where every timber is decided and one of their joints has no answer. */
  boolean brokenAtJoints() {
    return broken.filter(each -> each.asked().phase() == Phase.JOINTS).isPresent();
  }

  /**
   * True where nothing else need be tried: every question has its answer, or the site is refused.
   */
  boolean ended() {
    return broken().isEmpty() || refused();
  }

  boolean refused() {
    return refusal.isPresent();
  }

  boolean answered(Question question) {
    return resolutions.containsKey(question);
  }

  /** Every check of the answers. */
  Confirmation confirmation() {
    Set<Question> asked = EnumSet.noneOf(Question.class);
    asked.addAll(resolutions.keySet());
    asked.addAll(held.keySet());
    return new Confirmation(problem, answers, asked);
  }

  /** What forbids the answers that were not the rules' to give, in the order of the questions. */
  List<Shortfall> shortfalls() {
    return held.values().stream().flatMap(List::stream).toList();
  }

  /** The limits of all checks, with those that the base's record has eased. */
  CheckLimits checkLimits() {
    return easing.checkLimits();
  }

  /** Tells the stops of look and proportion as a later run to the same answers found them. */
  void tellAmongTimbersOf(Pass last) {
    resolutions.replaceAll(
        (question, told) -> last.resolution(question).map(told::amongTimbersOf).orElse(told));
  }

  /**
   * True where a stop of look or proportion is told that an earlier run found and this one does
   * not: the timbers that it names are gone.
   */
  boolean tellsWhatIsGone() {
    return resolutions.entrySet().stream()
        .anyMatch(each -> each.getValue().tellsMoreThan(found(each.getKey())));
  }

  private List<Fired> found(Question question) {
    return Objects.requireNonNull(collected.get(question)).findings();
  }

  Map<Question, Resolution.Answered> resolutions() {
    return resolutions;
  }

  /** What became of one question, where it was answered by the rules. */
  Optional<Resolution.Answered> resolution(Question question) {
    return Optional.ofNullable(resolutions.get(question));
  }

  /**
   * The answers among which what governs one was found. A size that a check stopped in an earlier
   * run stood among other timbers then, and what those became since is its consequence, not its
   * cause.
   */
  Answers among(Question question) {
    return stopped.getOrDefault(question, answers);
  }

  /**
   * Everything the rules found about one question.
   *
   * @param options what it may be answered with, smallest first; none for numbers
   */
  record QuestionFindings(List<String> options, List<Fired> findings) {}

  Map<Question, QuestionFindings> collected() {
    return collected;
  }

  List<Reason> cautions() {
    return cautions;
  }

  /** The answers with the loads that the rules make of them. */
  Answers loaded(Answers from) {
    Pass again = new Pass(problem, runner, from, Optional.empty(), List.of());
    again.run(Phase.LOADS);
    return again.answers();
  }

  private void run(Phase phase) {
    PhaseRun phaseRun = runner.of(phase, told(phase), answers, floors);
    PhaseFacts phaseFacts = phaseRun.phaseFacts();
    List<Fired> fired = phaseRun.fired();
    fired.forEach(this::noteIfGeneral);
    List<Question> questions = phaseFacts.questions(phase);
    forgetRoles(phase, questions);
    for (Question question : questions) {
      if (broken.isEmpty() && refusal.isEmpty()) {
        collected.put(
            question, new QuestionFindings(phaseFacts.options(question), about(question, fired)));
        answer(question, phaseFacts, about(question, fired));
      }
    }
  }

  /** A grade that a role needed for a size which it no longer has is no answer any more. */
  private void forgetRoles(Phase phase, List<Question> asked) {
    for (TimberRole role : TimberRole.values()) {
      for (Question own : List.of(role.species(), role.grade())) {
        if (own.phase() == phase && !asked.contains(own)) {
          answers = answers.without(own);
        }
      }
    }
  }

  /** What this pass has to tell the rules, apart from what is worked out from it. */
  private List<Fact> told(Phase phase) {
    List<Fact> told = new ArrayList<>();
    for (Answer answer : answers.all()) {
      told.add(answer);
      problem.stock().behind(answer).ifPresent(told::add);
    }
    told.addAll(tried);
    told.addAll(easing.facts());
    if (phase == Phase.CAUTIONS) {
      told.addAll(relied());
      told.addAll(easing.beyondPublished(confirmation()));
    }
    return told;
  }

  /** Where nothing is built, what holds whatever an engineer may make of it. */
  private void cautionOfAnyWork() {
    List<Fact> facts = new ArrayList<>(problem.facts());
    facts.addAll(problem.tables().cautions().rows());
    facts.addAll(problem.tables().wind().rows());
    facts.addAll(relied());
    runner.ofAnyWork(facts).forEach(this::noteIfGeneral);
  }

  private void noteIfGeneral(Fired fired) {
    if (fired.finding() instanceof Finding.Caution) {
      cautions.add(new Reason(fired.finding(), fired.note(), false, fired.because()));
    } else if (fired.finding() instanceof Finding.Refuse && refusal.isEmpty()) {
      refusal = Optional.of(new Reason(fired.finding(), fired.note(), true, fired.because()));
    } else if (fired.finding() instanceof Finding.Ease ease) {
      easing.note(ease);
    }
  }

  private void answer(Question question, PhaseFacts phaseFacts, List<Fired> findings) {
    Optional<Answer> given = problem.fixed(question, answers);
    if (given.isPresent()) {
      hold(given.get(), findings);
      return;
    }
    Resolution resolution = resolve(question, phaseFacts, findings);
    if (resolution instanceof Resolution.Answered answered) {
      resolutions.put(question, answered);
      asked.put(question, answers);
      answers = answers.with(answered.answer());
    } else if (problem.fixed().any()) {
      // A given design is not tried otherwise: what comes closest shows by how much it fails.
      hold(((Resolution.Unanswerable) resolution).closestAnswer(), findings);
    } else {
      broken = Optional.of((Resolution.Unanswerable) resolution);
    }
  }

  /** What was told in the run before was found among the answers of that time. */
  private void noteStopped(Question question) {
    before
        .map(last -> last.stopped.getOrDefault(question, last.asked.get(question)))
        .ifPresent(then -> stopped.put(question, then));
  }

  private Resolution resolve(Question question, PhaseFacts phaseFacts, List<Fired> findings) {
    if (question.numeric()) {
      return new NumberResolver(question, Rounding.of(question, problem.metric()), findings)
          .resolve();
    }
    OptionResolver resolver =
        new OptionResolver(
                question, phaseFacts.options(question), findings, floor(question, phaseFacts))
            .keeping(left(question));
    Resolution resolution = resolver.resolve();
    if (resolution instanceof Resolution.Answered answered
        && resolver.tellsEarlier(answered.reasons().get(0))) {
      noteStopped(question);
    }
    return resolution;
  }

  private void hold(Answer answer, List<Fired> findings) {
    held.put(answer.question(), new Audit(problem.tables(), answer).of(findings));
    answers = answers.with(answer);
  }

  private static List<Fired> about(Question question, List<Fired> fired) {
    return fired.stream()
        .filter(
            each ->
                each.finding() instanceof Finding.Judgement judgement
                    && judgement.question() == question)
        .toList();
  }

  private int floor(Question question, PhaseFacts phaseFacts) {
    return Math.max(0, phaseFacts.options(question).indexOf(floors.getOrDefault(question, "")));
  }

  /** What stopped the options of a question in the run before. */
  private List<Reason> left(Question question) {
    return before
        .flatMap(last -> last.resolution(question))
        .map(Resolution.Answered::rejected)
        .orElse(List.of());
  }

  /** The rules on whose findings the answers rest. */
  private List<Relied> relied() {
    return resolutions.values().stream()
        .map(resolution -> new Relied(resolution.reasons().get(0).note().id()))
        .distinct()
        .toList();
  }
}
