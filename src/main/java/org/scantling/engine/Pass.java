package org.scantling.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Relied;
import org.scantling.reasons.Shortfall;
import org.scantling.reasons.TimberRole;
import org.scantling.reasons.Yardstick;
import org.scantling.rulebase.Fired;

/**
 * One run through all phases, starting from the answers of the run before. What a design fixes is
 * not answered but held against the findings.
 */
final class Pass {
  private final Job job;
  private final Sheets sheets;
  private final Pass before;
  private final List<Fact> tried;
  private final Map<Question, Verdict.Answered> verdicts = new EnumMap<>(Question.class);
  private final Map<Question, List<Shortfall>> held = new EnumMap<>(Question.class);
  private final List<Reason> cautions = new ArrayList<>();
  private final Easing easing;
  private final Map<Question, Heard> heard = new EnumMap<>(Question.class);
  private final Map<Question, Answers> asked = new EnumMap<>(Question.class);
  private final Map<Question, Answers> stopped = new EnumMap<>(Question.class);
  private Answers answers;
  private Verdict.Unanswerable broken;
  private Reason refusal;

  /**
   * @param before the run before, below whose sizes this one does not go; null for the first
   * @param tried what came of options that were tried before
   */
  Pass(Job job, Sheets sheets, Answers start, Pass before, List<Fact> tried) {
    this.job = job;
    this.sheets = sheets;
    this.answers = start;
    this.before = before;
    this.tried = tried;
    this.easing = new Easing(job);
  }

  /** Answers every question, as far as there are answers. */
  void run() {
    for (Phase phase : Phase.values()) {
      if (phase != Phase.CAUTIONS && broken().isEmpty()) {
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
  Optional<Verdict.Unanswerable> broken() {
    return refusal != null
        ? Optional.of(new Verdict.Unanswerable(null, refusal, List.of()))
        : Optional.ofNullable(broken);
  }

  /** True where every timber is decided and one of their joints has no answer. */
  boolean brokenAtJoints() {
    return broken != null && broken.question().phase() == Phase.JOINTS;
  }

  boolean refused() {
    return refusal != null;
  }

  boolean answered(Question question) {
    return verdicts.containsKey(question);
  }

  /** Every check of the answers. */
  Confirmation confirmation() {
    Set<Question> asked = EnumSet.noneOf(Question.class);
    asked.addAll(verdicts.keySet());
    asked.addAll(held.keySet());
    return new Confirmation(job, answers, asked);
  }

  /** What forbids the answers that were not the rules' to give, in the order of the questions. */
  List<Shortfall> shortfalls() {
    return held.values().stream().flatMap(List::stream).toList();
  }

  /** The limits of all checks, with those that the base's record has eased. */
  Yardstick yardstick() {
    return easing.yardstick();
  }

  /** Tells the stops of look and proportion as a later run to the same answers found them. */
  void tellAmongTimbersOf(Pass last) {
    verdicts.replaceAll((question, told) -> told.amongTimbersOf(last.verdicts.get(question)));
  }

  /**
   * True where a stop of look or proportion is told that an earlier run found and this one does
   * not: the timbers that it names are gone.
   */
  boolean tellsWhatIsGone() {
    return verdicts.entrySet().stream()
        .anyMatch(each -> each.getValue().tellsMoreThan(heard.get(each.getKey()).findings()));
  }

  Map<Question, Verdict.Answered> verdicts() {
    return verdicts;
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
  record Heard(List<String> options, List<Fired> findings) {}

  Map<Question, Heard> heard() {
    return heard;
  }

  List<Reason> cautions() {
    return cautions;
  }

  /** The answers with the loads that the rules make of them. */
  Answers loaded(Answers from) {
    Pass again = new Pass(job, sheets, from, null, List.of());
    again.run(Phase.LOADS);
    return again.answers();
  }

  private void run(Phase phase) {
    Sheet sheet = sheets.of(phase, told(phase), answers);
    Desk desk = sheet.desk();
    List<Fired> fired = sheet.fired();
    fired.forEach(this::noteIfGeneral);
    List<Question> questions = desk.questions(phase);
    forgetRoles(phase, questions);
    for (Question question : questions) {
      if (broken == null && refusal == null) {
        heard.put(question, new Heard(desk.options(question), about(question, fired)));
        answer(question, desk, about(question, fired));
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
      job.stock().behind(answer).ifPresent(told::add);
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
    List<Fact> facts = new ArrayList<>(job.facts());
    facts.addAll(job.tables().cautions().rows());
    facts.addAll(job.tables().wind().rows());
    facts.addAll(relied());
    sheets.ofAnyWork(facts).forEach(this::noteIfGeneral);
  }

  private void noteIfGeneral(Fired fired) {
    if (fired.finding() instanceof Finding.Caution) {
      cautions.add(new Reason(fired.finding(), fired.note(), false, fired.because()));
    } else if (fired.finding() instanceof Finding.Refuse && refusal == null) {
      refusal = new Reason(fired.finding(), fired.note(), true, fired.because());
    } else if (fired.finding() instanceof Finding.Ease ease) {
      easing.note(ease);
    }
  }

  private void answer(Question question, Desk desk, List<Fired> findings) {
    Optional<Answer> given = job.fixed(question, answers);
    if (given.isPresent()) {
      hold(given.get(), findings);
      return;
    }
    Verdict verdict = resolve(question, desk, findings);
    if (verdict instanceof Verdict.Answered answered) {
      verdicts.put(question, answered);
      asked.put(question, answers);
      noteStopped(question, answered.reasons().get(0));
      answers = answers.with(answered.answer());
    } else if (job.fixed().any()) {
      // A given design is not tried otherwise: what comes closest shows by how much it fails.
      hold(((Verdict.Unanswerable) verdict).closestAnswer(), findings);
    } else {
      broken = (Verdict.Unanswerable) verdict;
    }
  }

  /** What was told in the run before was found among the answers of that time. */
  private void noteStopped(Question question, Reason governing) {
    if (left(question).stream().anyMatch(each -> each.finding() == governing.finding())) {
      Answers then = before.stopped.getOrDefault(question, before.asked.get(question));
      stopped.put(question, then);
    }
  }

  private Verdict resolve(Question question, Desk desk, List<Fired> findings) {
    return question.numeric()
        ? new NumberResolver(question, Rounding.of(question, job.metric()), findings).resolve()
        : new OptionResolver(question, desk.options(question), findings, floor(question, desk))
            .keeping(left(question))
            .resolve();
  }

  private void hold(Answer answer, List<Fired> findings) {
    held.put(answer.question(), new Audit(job.tables(), answer).of(findings));
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

  /** Sizes only grow from pass to pass, so that the passes end. */
  private int floor(Question question, Desk desk) {
    if (before == null || !question.attribute().equals("size")) {
      return 0;
    }
    Verdict.Answered earlier = before.verdicts.get(question);
    return earlier == null
        ? 0
        : Math.max(0, desk.options(question).indexOf(earlier.answer().option()));
  }

  /** What stopped the options of a question in the run before. */
  private List<Reason> left(Question question) {
    Verdict.Answered earlier = before == null ? null : before.verdicts.get(question);
    return earlier == null ? List.of() : earlier.rejected();
  }

  /** The rules on whose findings the answers rest. */
  private List<Relied> relied() {
    return verdicts.values().stream()
        .map(verdict -> new Relied(verdict.reasons().get(0).note().id()))
        .distinct()
        .toList();
  }
}
