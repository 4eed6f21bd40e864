package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.ContinuousBeam;

class SagsTest {
  private static final double SPAN_IN = 90;
  private static final double TAIL_IN = 12;

  /**
   * By statics, a beam with two tails and P on one tip, EI = 1: that tip goes down P a^2 (L + a)/3,
   * the other up P a^2 L/6. What lasts on one tip and what comes and goes on the other add up at
   * each tip by itself; the worst of both never meet at one.
   */
  @Test
  void each_tip_keeps_what_moves_it() {
    ContinuousBeam beam = ContinuousBeam.of(SPAN_IN + 2 * TAIL_IN, TAIL_IN, TAIL_IN + SPAN_IN);
    double under = TAIL_IN * TAIL_IN * (SPAN_IN + TAIL_IN) / 3;
    double across = TAIL_IN * TAIL_IN * SPAN_IN / 6;

    Sags lasting = Sags.of(beam.solve(new BeamLoad.Point(0, 100)), beam);
    Sags passing = Sags.of(beam.solve(new BeamLoad.Point(SPAN_IN + 2 * TAIL_IN, 40)), beam);
    Sags both = lasting.and(passing, 1);

    assertThat(both.tip(0)).isCloseTo(100 * under + 40 * across, within(1e-6));
    assertThat(both.tip(1)).isCloseTo(100 * across + 40 * under, within(1e-6));
    assertThat(both.tip()).isEqualTo(both.tip(0)).isLessThan(140 * under);
  }
}
