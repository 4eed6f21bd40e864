package org.scantling.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FoliageWindTest {
  @Test
  void leaves_and_bare_stems_are_both_told() {
    FoliageWind wind =
        FoliageWind.on(1440, 16, new FoliageCover(0.8, 0.5), new FoliageCover(0.2, 1.0));
    assertThat(wind.inLeafLb()).isCloseTo(64, within(1e-9));
    assertThat(wind.bareLb()).isCloseTo(32, within(1e-9));
    assertThat(wind.worstLb()).isCloseTo(64, within(1e-9));
  }

  @Test
  void bare_stems_can_be_the_worse() {
    FoliageWind wind =
        FoliageWind.on(144, 10, new FoliageCover(0.9, 0.2), new FoliageCover(0.3, 1.2));
    assertThat(wind.worstLb()).isCloseTo(3.6, within(1e-9));
  }

  @Test
  void it_refuses_covers_that_cannot_be() {
    FoliageCover cover = new FoliageCover(0.5, 0.5);
    assertThatThrownBy(() -> new FoliageCover(1.1, 0.5))
        .hasMessage("foliage fill 1.1 must be between 0 and 1");
    assertThatThrownBy(() -> new FoliageCover(1, -0.5))
        .hasMessage("foliage drag factor -0.5 must be zero or more and finite");
    assertThatThrownBy(() -> FoliageWind.on(-1, 10, cover, cover))
        .hasMessage("foliage area -1.0 in² must be zero or more and finite");
    assertThatThrownBy(() -> FoliageWind.on(1, -10, cover, cover))
        .hasMessage("velocity pressure -10.0 psf must be zero or more and finite");
  }
}
