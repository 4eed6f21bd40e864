package org.scantling.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.shop.EndCut;

/** Between the points of the list the drawn curve is the round one, not its chords. */
class FairCurveTest {
  private static final double RADIUS_IN = 5;
  private static final double NOSE_IN = 2;

  private static List<EndCut.Corner> quarter(int parts) {
    List<EndCut.Corner> outline = new ArrayList<>();
    outline.add(new EndCut.Corner(0, 0));
    for (int i = 0; i <= parts; i++) {
      double turn = Math.PI / 2 * i / parts;
      outline.add(
          new EndCut.Corner(
              RADIUS_IN * (1 - Math.cos(turn)), NOSE_IN + RADIUS_IN * Math.sin(turn)));
    }
    return outline;
  }

  @Test
  void a_quarter_of_a_circle_is_round_within_a_sixty_fourth() {
    List<EndCut.Corner> drawn = FairCurve.of(new EndCut.Shaped("curve", quarter(6)));

    assertThat(drawn).containsAll(quarter(6)).hasSizeGreaterThan(40);
    for (EndCut.Corner each : drawn.subList(1, drawn.size())) {
      assertThat(Math.hypot(RADIUS_IN - each.backIn(), each.downIn() - NOSE_IN))
          .isCloseTo(RADIUS_IN, within(1.0 / 64));
    }
  }

  @Test
  void a_slant_stays_straight() {
    EndCut.Shaped slant = new EndCut.Shaped("slant", quarter(1));

    assertThat(FairCurve.of(slant)).isEqualTo(slant.outline());
  }
}
