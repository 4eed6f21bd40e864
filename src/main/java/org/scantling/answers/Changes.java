package org.scantling.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.quantity.Measure;
import org.scantling.quantity.MeasureText;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Outcome;
import org.scantling.reasons.Question;

/** Which answers are not as the base has them. */
public final class Changes {
  private static final double SAME_IN = 1.0 / 16;

  private final Answers base;

  public Changes(BaseRecord base) {
    this.base = base.answers();
  }

  /** How the base answers a question, where it does. */
  public Optional<Outcome> base(Question question) {
    return base.find(question).map(Changes::outcome);
  }

  /** True for an answer that the base has otherwise. */
  public boolean is(Answer now) {
    return base(now.question()).filter(then -> !same(then, outcome(now))).isPresent();
  }

  /** How the base has every answer that is not as in the base. */
  public List<Answer> before(Answers now) {
    List<Answer> before = new ArrayList<>();
    for (Answer each : now.all()) {
      if (is(each)) {
        before.add(base.find(each.question()).orElseThrow());
      }
    }
    return before;
  }

  public static Outcome outcome(Answer answer) {
    Question question = answer.question();
    if (question.numeric()) {
      return new Outcome.Amount(new Measure(answer.number(), question.unit()));
    }
    return question.unit() == Unit.COUNT && question.counted()
        ? new Outcome.Amount(Measure.count(Integer.parseInt(answer.option())))
        : new Outcome.Word(answer.option());
  }

  private static boolean same(Outcome one, Outcome other) {
    if (one instanceof Outcome.Amount a && other instanceof Outcome.Amount b) {
      return a.measure().unit() == Unit.INCH
          ? Math.abs(a.measure().amount() - b.measure().amount()) <= SAME_IN
          : reads(a, b, MeasureText::imperial) || reads(a, b, MeasureText::metric);
    }
    return one.equals(other);
  }

  /**
   * Amounts that read the same in one system of units are the same: a round number of the other
   * system says no more than that.
   */
  private static boolean reads(
      Outcome.Amount one, Outcome.Amount other, Function<Measure, String> text) {
    return text.apply(one.measure()).equals(text.apply(other.measure()));
  }
}
