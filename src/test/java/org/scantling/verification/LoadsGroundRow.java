package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.aggregator.ArgumentsAggregator;

/** One row of a table of expected values: where it comes from, what goes in, what must come out. */
record LoadsGroundRow(
    String id,
    String source,
    String status,
    String quantity,
    Map<String, Double> inputs,
    double expected,
    double tolerance,
    String reason) {
  private static final Set<String> STATUSES = Set.of("seen", "memory", "computed");

  double given(String name) {
    assertThat(inputs).as("inputs of %s", id).containsKey(name);
    return inputs.get(name);
  }

  void check(Map<String, ToDoubleFunction<LoadsGroundRow>> kernels) {
    assertThat(STATUSES).as("status of %s", id).contains(status);
    assertThat(source).as("source of %s", id).isNotBlank();
    assertThat(reason).as("reason of %s", id).isNotBlank();
    assertThat(kernels).as("quantity of %s", id).containsKey(quantity);
    assertThat(kernels.get(quantity).applyAsDouble(this))
        .as("%s: %s (%s, %s)", id, quantity, source, reason)
        .isCloseTo(expected, within(tolerance));
  }

  static final class Reader implements ArgumentsAggregator {
    @Override
    public LoadsGroundRow aggregateArguments(ArgumentsAccessor row, ParameterContext context) {
      return new LoadsGroundRow(
          row.getString(0),
          row.getString(1),
          row.getString(4),
          row.getString(5),
          Arrays.stream(row.getString(6).split(";", -1))
              .map(pair -> pair.split("=", 2))
              .collect(Collectors.toMap(pair -> pair[0], pair -> Double.parseDouble(pair[1]))),
          row.getDouble(7),
          row.getDouble(9),
          row.getString(10));
    }
  }
}
