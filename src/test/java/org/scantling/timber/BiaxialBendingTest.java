package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** NDS 2018, 3.9.2 with fc = 0. */
class BiaxialBendingTest {
  /** 6 in deep and 1 in broad: 6 in³ one way, 1 in³ the other. */
  private static final Rectangle PLANK = new Rectangle(1, 6);

  private static Bending bending(double stressPsi, Rectangle section, double allowablePsi) {
    return Bending.of(
        stressPsi * section.sectionModulusIn3(),
        section,
        new AdjustedStress("Fb", allowablePsi, List.of()));
  }

  private static BeamStability stability(double criticalPsi) {
    return new BeamStability(
        EffectiveLength.stated(100, PLANK.depthIn()),
        PLANK,
        Sample.stress(100_000),
        Sample.stress(1000),
        10,
        criticalPsi,
        criticalPsi / 1000,
        (1 + criticalPsi / 1000) / 1.9,
        1);
  }

  private static BiaxialBending bent(double deepPsi, double criticalPsi) {
    return BiaxialBending.of(
        bending(deepPsi, PLANK, 1000), bending(300, PLANK.turned(), 1200), stability(criticalPsi));
  }

  @Test
  void the_narrow_way_counts_for_more_the_nearer_the_deep_way_is_to_rolling() {
    // 0.5 + 0.25/(1 − (500/2000)²)
    assertThat(bent(500, 2000).interactionRatio()).isCloseTo(0.76667, within(1e-5));
    // 0.5 + 0.25/(1 − (500/1000)²)
    assertThat(bent(500, 1000).interactionRatio()).isCloseTo(0.83333, within(1e-5));
  }

  @Test
  void a_beam_that_rolls_first_is_beyond_every_limit() {
    assertThat(bent(500, 400).check().ratio()).isEqualTo(CombinedStress.BEYOND_BUCKLING);
  }
}
