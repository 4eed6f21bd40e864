package org.scantling.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.Unit;
import org.scantling.reasons.DeadEnd;
import org.scantling.reasons.Fact;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Relied;
import org.scantling.rulebase.Fired;

/** One run through all phases, starting from the answers of the run before. */
final class Pass {
  private final Job job;
  private final Rulings rulings;
  private final Answers start;
  private final Pass before;
  private final List<DeadEnd> deadEnds;
  private final Map<Question, Verdict.Answered> verdicts = new EnumMap<>(Question.class);
  private final List<Reason> cautions = new ArrayList<>();
  private final Map<Question, Heard> heard = new EnumMap<>(Question.class);
  private Answers answers;
  private Verdict.Unanswerable broken;
  private Reason refusal;

  /**
   * @param before the run before, below whose sizes this one does not go; null for the first
   * @param deadEnds options that were tried and led nowhere
   */
  Pass(Job job, Rulings rulings, Answers start, Pass before, List<DeadEnd> deadEnds) {
    this.job = job;
    this.rulings = rulings;
    this.start = start;
    this.answers = start;
    this.before = before;
    this.deadEnds = deadEnds;
  }

  void run() {
    for (Phase phase : Phase.values()) {
      if (phase == Phase.CAUTIONS && !answers.equals(start)) {
        // Cautions answer nothing: they are for the pass in which nothing changes any more.
        return;
      }
      run(phase);
      if (broken != null || refusal != null) {
        return;
      }
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

  boolean refused() {
    return refusal != null;
  }

  boolean answered(Question question) {
    return verdicts.containsKey(question);
  }

  Map<Question, Verdict.Answered> verdicts() {
    return verdicts;
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

  private void run(Phase phase) {
    Desk desk = new Desk(job, answers, phase);
    List<Fact> facts = new ArrayList<>(desk.facts());
    facts.addAll(deadEnds);
    if (phase == Phase.CAUTIONS) {
      facts.addAll(job.tables().cautions().rows());
      facts.addAll(relied());
    }
    List<Fired> fired = rulings.on(phase, facts);
    fired.forEach(this::noteIfGeneral);
    for (Question question : desk.questions(phase)) {
      if (broken == null && refusal == null) {
        heard.put(question, new Heard(desk.options(question), about(question, fired)));
        answer(question, desk, about(question, fired));
      }
    }
  }

  private void noteIfGeneral(Fired fired) {
    if (fired.finding() instanceof Finding.Caution) {
      cautions.add(new Reason(fired.finding(), fired.note(), false, fired.because()));
    } else if (fired.finding() instanceof Finding.Refuse && refusal == null) {
      refusal = new Reason(fired.finding(), fired.note(), true, fired.because());
    }
  }

  private void answer(Question question, Desk desk, List<Fired> findings) {
    Verdict verdict =
        question.numeric()
            ? new NumberResolver(question, rounding(question), findings).resolve()
            : new OptionResolver(question, desk.options(question), findings, floor(question, desk))
                .keeping(left(question))
                .resolve();
    if (verdict instanceof Verdict.Answered answered) {
      verdicts.put(question, answered);
      answers = answers.with(answered.answer());
    } else {
      broken = (Verdict.Unanswerable) verdict;
    }
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

  private Rounding rounding(Question question) {
    boolean metric = job.metric();
    return switch (question) {
      case FOOTING_DEPTH, HOLE_DIAMETER -> metric ? Rounding.UP_TO_25_MM : Rounding.UP_TO_INCH;
      case ROW_SPACING, POST_HEIGHT -> metric ? Rounding.UP_TO_MM : Rounding.UP_TO_SIXTEENTH;
      case BAY, CROSSBEAM_SPACING, CLEAR_WIDTH, HEADROOM, FROST_DEPTH -> Rounding.NONE;
      default ->
          question.unit() != Unit.INCH
              ? Rounding.NONE
              : metric ? Rounding.DOWN_TO_MM : Rounding.DOWN_TO_SIXTEENTH;
    };
  }
}
