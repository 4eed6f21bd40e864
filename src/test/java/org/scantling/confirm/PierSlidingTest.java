package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;

/** A pier of 12 in in sand: 0.25 of friction, 150 psf/ft; a foot of it weighs 117.81 lb. */
class PierSlidingTest {
  private static final FootingWork.Foot PIER =
      new FootingWork.Foot(
          true,
          0,
          new PresumptiveSoil(2000, 150, 0.25, 0),
          2,
          new BallastWeights(150, 100, 0),
          16,
          0);

  private static PierSliding.Push push(double pushLb, double downLb) {
    return new PierSliding.Push(LoadCombination.UPLIFT, pushLb, downLb);
  }

  private static PierSliding pier(PierSliding.Push... pushes) {
    return new PierSliding(PIER, List.of(pushes));
  }

  @Test
  void the_base_rubs_and_the_side_leans() {
    // 0.25 (100 + 0.6 · 117.81) + 150/2 · 1 sq ft = 42.671 + 75 lb.
    Check check = pier().pier(push(100, 100), 12, 12).sliding().check();
    assertThat(check.demand()).isEqualTo(100);
    assertThat(check.capacity()).isCloseTo(117.671, within(1e-3));
  }

  @Test
  void a_pier_that_is_lifted_off_rubs_on_nothing() {
    assertThat(pier().pier(push(100, -500), 12, 12).sliding().resistanceLb())
        .isCloseTo(75, within(1e-9));
  }

  @Test
  void the_depth_is_the_first_inch_at_which_every_push_is_held() {
    // Lifted off, the side alone: 75 (d/12)² of 100 lb is met at 13.86 in.
    assertThat(pier(push(100, -500)).depthIn(12, 96)).isEqualTo(14);
    assertThat(pier(push(100, -500), push(1, 0)).depthIn(12, 96)).isEqualTo(14);
    assertThat(pier(push(1e6, 0)).depthIn(12, 96)).isEqualTo(96);
    assertThat(pier().depthIn(12, 96)).isZero();
  }

  @Test
  void the_hardest_push_is_the_one_nearest_to_sliding() {
    PierSliding.Push light = push(100, -500);
    assertThat(pier(push(100, 400), light).hardest(12, 12).map(SlidPier::push)).contains(light);
    assertThat(push(100, 400).worse(push(50, -500))).isEqualTo(light);
  }

  @Test
  void the_depth_against_tipping_always_keeps_a_pier_from_sliding() {
    for (double windLb = 50; windLb <= 800; windLb += 50) {
      FootingWork work =
          new FootingWork(
              PIER, new BracedFeet(BracedExample.walk(2, windLb)), /* bracketHeightIn= */ 1);
      double depthIn = work.embedment(16).depthIn();
      Checked sliding =
          SmallArbour.byId(work.of(depthIn, 16, BracedExample.SOURCES)).get("footing.sliding");
      assertThat(sliding.check().ratio()).isBetween(0.05, 0.6);
      assertThat(work.slidingDepthIn(16, 96)).isLessThan(depthIn);
    }
  }
}
