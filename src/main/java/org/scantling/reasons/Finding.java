package org.scantling.reasons;

import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;

/**
 * What one rule found. Rules never set an answer: they bound it, prefer one, or reject an option,
 * and each finding is judged on its own. Which rule found it stands beside it (see {@link
 * RuleNote}): the rule base knows what fired, so no rule writes its own name.
 */
public sealed interface Finding {
  Evidence evidence();

  /** A finding about the answer to a question. */
  sealed interface Judgement extends Finding {
    Question question();
  }

  /** The answer may not be less than {@code number}. */
  record AtLeast(Question question, double number, Evidence evidence) implements Judgement {}

  /** The answer may not be more than {@code number}. */
  record AtMost(Question question, double number, Evidence evidence) implements Judgement {}

  /** Of the numbers allowed, the nearest to {@code number}. */
  record PreferNumber(Question question, Priority priority, double number, Evidence evidence)
      implements Judgement {}

  /** Of the options allowed, {@code option} or the next above it. */
  record PreferOption(Question question, Priority priority, String option, Evidence evidence)
      implements Judgement {}

  /**
   * The option cannot be the answer.
   *
   * @param check the check or table row that stopped it
   * @param ratio what is asked over what is allowed; above 1, or 1 for what is no matter of more or
   *     less
   */
  record Reject(Question question, String option, String check, double ratio, Evidence evidence)
      implements Judgement {
    /** Whether a worked check stopped it, and not a row of look or proportion. */
    public boolean calculated() {
      return evidence.find("capacity").isPresent();
    }
  }

  /** Something a person must be told. */
  record Caution(Severity severity, Evidence evidence) implements Finding {}

  /**
   * The demand is outside what the rule base covers.
   *
   * @param demand the path of the demand that breaks it
   * @param ratio what is asked over what is covered; above 1, or 1 for a use that is never covered
   */
  record Refuse(String demand, double ratio, Evidence evidence) implements Finding {}

  /**
   * The check may be worked harder than published, up to {@code ratio}.
   *
   * @param ratio greatest demand over capacity, above the limit of the check's row
   */
  record Ease(String check, double ratio, Evidence evidence) implements Finding {}

  static AtLeast atLeast(Question question, double number) {
    return atLeast(question, number, Evidence.none());
  }

  static AtLeast atLeast(Question question, double number, Evidence evidence) {
    return new AtLeast(question, number, evidence);
  }

  static AtMost atMost(Question question, double number) {
    return atMost(question, number, Evidence.none());
  }

  static AtMost atMost(Question question, double number, Evidence evidence) {
    return new AtMost(question, number, evidence);
  }

  /** The proven value, kept unless something forbids it. */
  static PreferNumber keep(Question question, double number) {
    return new PreferNumber(question, Priority.KEPT, number, Evidence.none());
  }

  /** The proven proportion, kept unless something forbids it. */
  static PreferNumber keep(Question question, double number, Evidence evidence) {
    return new PreferNumber(question, Priority.KEPT, number, evidence);
  }

  /** The proven option, kept unless something forbids it. */
  static PreferOption keep(Question question, String option) {
    return new PreferOption(question, Priority.KEPT, option, Evidence.none());
  }

  /** What the trade does here. */
  static PreferNumber prefer(Question question, double number, Evidence evidence) {
    return new PreferNumber(question, Priority.TRADE, number, evidence);
  }

  /** What the trade does here, whatever the numbers. */
  static PreferOption prefer(Question question, String option) {
    return prefer(question, option, Evidence.none());
  }

  /** What the trade does here. */
  static PreferOption prefer(Question question, String option, Evidence evidence) {
    return new PreferOption(question, Priority.TRADE, option, evidence);
  }

  /** What the site file asks for. */
  static PreferNumber asked(Question question, double number) {
    return new PreferNumber(question, Priority.ASKED, number, Evidence.none());
  }

  /** What comes of what the site file asks for. */
  static PreferNumber asked(Question question, double number, Evidence evidence) {
    return new PreferNumber(question, Priority.ASKED, number, evidence);
  }

  /** What the site file asks for. */
  static PreferOption asked(Question question, String option) {
    return new PreferOption(question, Priority.ASKED, option, Evidence.none());
  }

  /** What the site file asks for, with what comes of it. */
  static PreferOption asked(Question question, String option, Evidence evidence) {
    return new PreferOption(question, Priority.ASKED, option, evidence);
  }

  /** An option that a table row forbids. */
  static Reject reject(Candidate candidate, Cited row, double ratio, Evidence evidence) {
    return new Reject(candidate.question(), candidate.option(), row.id(), ratio, evidence.row(row));
  }

  /** An option that cannot be, whatever its size. */
  static Reject reject(Candidate candidate, String check) {
    return new Reject(candidate.question(), candidate.option(), check, 1, Evidence.none());
  }

  /** A base that gives way to another, by the row that tells them apart. */
  static Reject reject(Question question, BaseGap gap, Cited row) {
    return new Reject(question, gap.base(), row.id(), 1, gap.evidence().row(row));
  }

  /** An answer that left a later question without one. */
  static Reject reject(DeadEnd end) {
    return new Reject(
        end.question(),
        end.option(),
        end.check(),
        end.ratio(),
        Evidence.saw("broken", end.broken()));
  }

  /** Something that a person must be told. */
  static Caution caution(Severity severity, Evidence evidence) {
    return new Caution(severity, evidence);
  }

  /** A demand beyond a limit of the rule base. */
  static Refuse refuse(Demand demand, double asked, Limit limit) {
    Evidence evidence =
        Evidence.saw("asked", new Measure(asked, demand.unit()))
            .and("limit", new Measure(limit.amount(), demand.unit()))
            .row(limit);
    return new Refuse(demand.path(), asked / limit.amount(), evidence);
  }

  /** A demand that the rule base does not cover, with what is told of it. */
  static Refuse refuse(Demand demand, double ratio, Evidence evidence) {
    return new Refuse(demand.path(), ratio, evidence);
  }

  /** A check that may be worked as hard as the base design itself has been. */
  static Ease ease(ProvenCheck own, Cited limit) {
    Evidence evidence =
        Evidence.saw("record", Measure.ratio(own.ratio()))
            .and("since", new Measure(own.sinceYear(), Unit.YEAR))
            .row(limit);
    return new Ease(own.check(), own.ratio(), evidence);
  }

  /** An option that a structural check forbids. */
  static Reject reject(OptionCheck worked, Cited limit) {
    Checked checked = worked.checked();
    return new Reject(
        worked.question(),
        worked.option(),
        checked.id(),
        checked.check().ratio(),
        Evidence.saw("demand", checked.demand())
            .and("capacity", checked.capacity())
            .and("combination", checked.combination())
            .row(limit));
  }
}
