package org.scantling.reasons;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A whole structure that could be built on a site: it passes every check.
 *
 * @param settings what {@code --set} takes to have it proposed; none for what is proposed anyway
 * @param proposal the structure
 * @param measures by what it is compared with the others
 * @param hands people whom its heaviest piece takes: 1, 2, or 3 for more than two
 * @param bestAt at what none that was tried is better, in the order in which it counts
 * @param cost where prices were given
 */
public record WholeOption(
    List<String> settings,
    Proposal proposal,
    Map<OptionMeasure, Double> measures,
    int hands,
    List<OptionMeasure> bestAt,
    Optional<Cost> cost) {
  public WholeOption {
    settings = List.copyOf(settings);
    measures = Collections.unmodifiableMap(new EnumMap<>(measures));
    bestAt = List.copyOf(bestAt);
  }

  /**
   * @param amount of everything that has a price; empty where nothing has one
   * @param without the keys of what it leaves out
   */
  public record Cost(Optional<BigDecimal> amount, String currency, List<String> without) {
    public Cost {
      without = List.copyOf(without);
    }
  }

  /** True of what is proposed without setting anything. */
  public boolean asProposed() {
    return settings.isEmpty();
  }

  public double measure(OptionMeasure measure) {
    return measures.getOrDefault(measure, 0.0);
  }
}
