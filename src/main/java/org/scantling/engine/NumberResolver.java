package org.scantling.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.scantling.answers.Rounding;
import org.scantling.reasons.Answer;
import org.scantling.reasons.Finding;
import org.scantling.reasons.Question;
import org.scantling.reasons.Reason;
import org.scantling.rulebase.Fired;
import org.scantling.rulebase.RuleBaseFault;

/**
 * Answers a question whose answer is a number: the preferred number, held between the largest "at
 * least" and the smallest "at most", rounded once.
 */
final class NumberResolver {
  private static final double SLACK = 1e-9;

  private final Question question;
  private final Rounding rounding;
  private final List<Fired> findings;

  NumberResolver(Question question, Rounding rounding, List<Fired> findings) {
    this.question = question;
    this.rounding = rounding;
    this.findings = findings;
  }

  Resolution resolve() {
    Optional<Fired> low = extreme(Finding.AtLeast.class, Finding.AtLeast::number);
    Optional<Fired> high = extreme(Finding.AtMost.class, finding -> -finding.number());
    double least = low.map(f -> atLeast(f).number()).orElse(Double.NEGATIVE_INFINITY);
    double most = high.map(f -> atMost(f).number()).orElse(Double.POSITIVE_INFINITY);
    if (least > most * (1 + SLACK)) {
      return new Resolution.Unanswerable(
          Optional.of(question),
          reason(low.orElseThrow(), true),
          List.of(reason(high.orElseThrow(), false)));
    }
    Optional<Fired> wish = preferred();
    double wanted = wish.map(f -> preference(f).number()).orElse(low.isPresent() ? least : most);
    Fired governing =
        wanted < least
            ? low.orElseThrow()
            : wanted > most
                ? high.orElseThrow()
                : wish.or(() -> low).or(() -> high).orElseThrow(this::unexplained);
    double value = rounding.within(least, most, Math.max(least, Math.min(most, wanted)));
    return new Resolution.Answered(Answer.number(question, value), reasons(governing), List.of());
  }

  /** The strongest preference; of two equally strong, the larger, which is the cautious one. */
  private Optional<Fired> preferred() {
    Comparator<Fired> byPriority = Comparator.comparing(f -> preference(f).priority());
    return findings.stream()
        .filter(f -> f.finding() instanceof Finding.PreferNumber)
        .max(byPriority.thenComparingDouble(f -> preference(f).number()));
  }

  private <T extends Finding> Optional<Fired> extreme(Class<T> kind, ToDoubleFunction<T> size) {
    return findings.stream()
        .filter(f -> kind.isInstance(f.finding()))
        .max(Comparator.comparingDouble(f -> size.applyAsDouble(kind.cast(f.finding()))));
  }

  private List<Reason> reasons(Fired governing) {
    List<Reason> reasons = new ArrayList<>();
    reasons.add(reason(governing, true));
    findings.stream()
        .filter(each -> each != governing)
        .forEach(each -> reasons.add(reason(each, false)));
    return reasons;
  }

  private static Reason reason(Fired fired, boolean governing) {
    return new Reason(fired.finding(), fired.note(), governing, fired.because());
  }

  private static Finding.AtLeast atLeast(Fired fired) {
    return (Finding.AtLeast) fired.finding();
  }

  private static Finding.AtMost atMost(Fired fired) {
    return (Finding.AtMost) fired.finding();
  }

  private static Finding.PreferNumber preference(Fired fired) {
    return (Finding.PreferNumber) fired.finding();
  }

  private RuleBaseFault unexplained() {
    return new RuleBaseFault("no rule has anything to say about " + question.id());
  }
}
