package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OpenTopTest {
  @Test
  void timber_covers_its_breadth_and_leaves_a_share_of_the_gaps() {
    OpenTop top = new OpenTop(1.5, 12, 0.5);
    assertThat(top.gapIn()).isCloseTo(10.5, within(1e-12));
    assertThat(top.solidRatio()).isCloseTo(0.125, within(1e-12));
    assertThat(top.coveredRatio()).isCloseTo(0.5625, within(1e-12));
  }

  @Test
  void crossbeams_side_by_side_leave_no_gap() {
    OpenTop closed = new OpenTop(1.5, 1.5, 0);
    assertThat(closed.gapIn()).isZero();
    assertThat(closed.coveredRatio()).isEqualTo(1);
  }

  @Property
  void leaves_cover_more_than_timber_alone_and_never_more_than_the_sky(
      @ForAll @DoubleRange(min = 1.5, max = 48) double spacingIn,
      @ForAll @DoubleRange(min = 0, max = 1) double fillRatio) {
    OpenTop top = new OpenTop(1.5, spacingIn, fillRatio);
    assertThat(top.coveredRatio()).isBetween(top.solidRatio() - 1e-12, 1 + 1e-12);
  }

  @Test
  void it_refuses_tops_that_cannot_be() {
    assertThatThrownBy(() -> new OpenTop(0, 12, 0))
        .hasMessage("crossbeam breadth 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new OpenTop(1.5, 1.4, 0))
        .hasMessage("crossbeam breadth 1.5 in must be at most the crossbeam spacing, 1.4 in");
    assertThatThrownBy(() -> new OpenTop(1.5, 12, 1.2))
        .hasMessage("foliage fill 1.2 must be between 0 and 1");
  }
}
