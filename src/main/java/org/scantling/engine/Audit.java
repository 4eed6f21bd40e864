package org.scantling.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.answers.Changes;
import org.scantling.quantity.Check;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Phase;
import org.scantling.reasons.Priority;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.reasons.Shortfall;
import org.scantling.reasons.SourceKind;
import org.scantling.rulebase.Fired;
import org.scantling.tables.Tables;

/**
 * Holds the findings on a question against an answer that stands already: which of them forbid it.
 */
final class Audit {
  private static final double LAST_BITS = 1e-9;

  private final Tables tables;
  private final Answer answer;
  private final Outcome found;

  Audit(Tables tables, Answer answer) {
    this.tables = tables;
    this.answer = answer;
    this.found = Changes.outcome(answer);
  }

  /** What forbids the answer, but for what a structural check tells already. */
  List<Shortfall> of(List<Fired> findings) {
    return findings.stream()
        .filter(each -> !toldByCheck(each))
        .flatMap(each -> broken(each).stream())
        .toList();
  }

  private boolean toldByCheck(Fired fired) {
    return fired.because().stream().anyMatch(each -> tables.checks().find(each).isPresent());
  }

  private Optional<Shortfall> broken(Fired fired) {
    Finding finding = fired.finding();
    if (finding instanceof Finding.AtLeast least) {
      return answer.number() < least.number() - slack(least.number())
          ? Optional.of(forbidden(fired, over(least.number(), answer.number())))
          : Optional.empty();
    }
    if (finding instanceof Finding.AtMost most) {
      return answer.number() > most.number() + slack(most.number())
          ? Optional.of(forbidden(fired, over(answer.number(), most.number())))
          : Optional.empty();
    }
    if (finding instanceof Finding.Reject reject) {
      return reject.option().equals(answer.option())
          ? Optional.of(forbidden(fired, over(reject.ratio(), 1)))
          : Optional.empty();
    }
    return notAsWished(fired);
  }

  private Optional<Shortfall> notAsWished(Fired fired) {
    Finding finding = fired.finding();
    if (finding instanceof Finding.PreferOption wish) {
      boolean other = wish.priority() == Priority.ASKED && !wish.option().equals(answer.option());
      return other ? Optional.of(notAsAsked(fired, OptionalDouble.empty())) : Optional.empty();
    }
    if (!(finding instanceof Finding.PreferNumber wish) || near(wish.number())) {
      return Optional.empty();
    }
    if (wish.priority() == Priority.ASKED) {
      return moreIsWelcome() && answer.number() > wish.number()
          ? Optional.empty()
          : Optional.of(notAsAsked(fired, apart(wish.number())));
    }
    return reason(fired).source().kind() == SourceKind.CALCULATION
        ? Optional.of(shortfall(fired, Shortfall.Kind.TAKEN_OTHERWISE, apart(wish.number())))
        : Optional.empty();
  }

  /** Room to pass is asked for as a least. */
  private boolean moreIsWelcome() {
    return phase() == Phase.CLEARANCE;
  }

  /** What those who pass need is never a mere habit, whoever says so. */
  private Shortfall forbidden(Fired fired, OptionalDouble ratio) {
    boolean habit =
        reason(fired).source().kind() == SourceKind.COMMON_PRACTICE && phase() != Phase.CLEARANCE;
    return shortfall(
        fired, habit ? Shortfall.Kind.OUT_OF_HABIT : Shortfall.Kind.DOES_NOT_MEET, ratio);
  }

  private Shortfall notAsAsked(Fired fired, OptionalDouble ratio) {
    return shortfall(fired, Shortfall.Kind.NOT_AS_ASKED, ratio);
  }

  private Shortfall shortfall(Fired fired, Shortfall.Kind kind, OptionalDouble ratio) {
    return new Shortfall(answer.question(), found, kind, ratio, reason(fired));
  }

  private static Reason reason(Fired fired) {
    return new Reason(fired.finding(), fired.note(), false, fired.because());
  }

  private Phase phase() {
    Question question = answer.question();
    return question.phase();
  }

  private boolean near(double number) {
    return Math.abs(answer.number() - number) <= slack(number);
  }

  private static double slack(double number) {
    return LAST_BITS * Math.max(1, Math.abs(number));
  }

  private OptionalDouble apart(double number) {
    return over(Math.max(number, answer.number()), Math.min(number, answer.number()));
  }

  /** Empty where the numbers tell no share. */
  private static OptionalDouble over(double more, double less) {
    return less > 0 && more > less
        ? OptionalDouble.of(new Check(more, less).ratio())
        : OptionalDouble.empty();
  }
}
