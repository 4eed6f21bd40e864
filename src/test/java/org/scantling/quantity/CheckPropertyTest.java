package org.scantling.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class CheckPropertyTest {
  @Property
  void more_demand_never_lowers_the_ratio(
      @ForAll @DoubleRange(min = 0, max = 1e6) double demand,
      @ForAll @DoubleRange(min = 0, max = 1e6) double more,
      @ForAll @DoubleRange(min = 0.01, max = 1e6) double capacity) {
    assertThat(new Check(demand + more, capacity).ratio())
        .isGreaterThanOrEqualTo(new Check(demand, capacity).ratio());
  }
}
