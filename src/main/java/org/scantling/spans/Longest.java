package org.scantling.spans;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.scantling.reasons.Checked;

/**
 * The greatest amount that passes every check. More is never easier: each check grows with the
 * span, the height or the load, so that halving finds the boundary.
 */
final class Longest {
  /** Searched from 1 in (or 1 sq ft) up; closer than anybody can measure. */
  private static final double CLOSE_ENOUGH = 1e-4;

  private final DoubleFunction<List<Checked>> checks;
  private final ToDoubleFunction<Checked> limit;

  /**
   * @param checks every check that counts, for an amount
   * @param limit greatest ratio of a check
   */
  Longest(DoubleFunction<List<Checked>> checks, ToDoubleFunction<Checked> limit) {
    this.checks = checks;
    this.limit = limit;
  }

  /**
   * @param amount the greatest that passes; empty where not even 1 does
   * @param governs the check that is worked hardest there
   */
  record Found(OptionalDouble amount, Checked governs) {}

  Found search() {
    if (!passes(1)) {
      return new Found(OptionalDouble.empty(), hardest(1));
    }
    double passesAt = 1;
    double failsAt = 2;
    while (passes(failsAt)) {
      passesAt = failsAt;
      failsAt = 2 * failsAt;
    }
    while (failsAt - passesAt > CLOSE_ENOUGH) {
      double middle = (passesAt + failsAt) / 2;
      if (passes(middle)) {
        passesAt = middle;
      } else {
        failsAt = middle;
      }
    }
    return new Found(OptionalDouble.of(passesAt), hardest(passesAt));
  }

  private boolean passes(double amount) {
    return checks.apply(amount).stream()
        .allMatch(each -> each.check().passes(limit.applyAsDouble(each)));
  }

  private Checked hardest(double amount) {
    return checks.apply(amount).stream()
        .max(Comparator.comparingDouble(each -> each.check().ratio() / limit.applyAsDouble(each)))
        .orElseThrow();
  }
}
