package org.scantling.options;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.reasons.OptionMeasure;
import org.scantling.reasons.Proposal;
import org.scantling.reasons.WholeOption;

/**
 * A structure that was tried and passes every check.
 *
 * @param measures as they are
 * @param hands people whom its heaviest piece takes
 */
record Trial(
    Attempt attempt,
    Proposal proposal,
    Map<OptionMeasure, Double> measures,
    int hands,
    Optional<WholeOption.Cost> cost) {
  Trial {
    measures = Collections.unmodifiableMap(new EnumMap<>(measures));
  }

  /** True of what is proposed without setting anything. */
  boolean asProposed() {
    return attempt.equals(Attempt.NOTHING);
  }

  double measure(OptionMeasure measure) {
    return measures.getOrDefault(measure, 0.0);
  }

  WholeOption bestAt(List<OptionMeasure> best) {
    return new WholeOption(attempt.settings(), proposal, measures, hands, best, cost);
  }
}
