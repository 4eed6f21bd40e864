package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SwayPropertyTest {
  @Property
  void more_weight_never_sways_less(
      @ForAll @DoubleRange(min = 0, max = 1e5) double weight,
      @ForAll @DoubleRange(min = 0, max = 1e4) double more,
      @ForAll @DoubleRange(min = 1, max = 1e5) double critical) {
    assertThat(new Sway(weight + more, critical).amplifierFactor())
        .isGreaterThanOrEqualTo(new Sway(weight, critical).amplifierFactor())
        .isGreaterThanOrEqualTo(1);
  }
}
