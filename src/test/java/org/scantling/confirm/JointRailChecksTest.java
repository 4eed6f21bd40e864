package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.timber.Dowel;

/** A 2x4 rail of 84 in, let 1 in into the posts of {@link BracedExample}, in dry fir of G 0.50. */
class JointRailChecksTest {
  private static final double LENGTH_IN = 84;

  private static final JointFix SCREWED =
      new JointFix(
          JointFix.Way.HOUSED,
          2,
          new Dowel(0.19, 0.152, 80000),
          new JointFix.Reach(3, 2, 0),
          new JointFix.Rated(0, 0));

  private static final JointFix ANGLES =
      new JointFix(
          JointFix.Way.RATED,
          2,
          Dowel.smooth(1, 1),
          new JointFix.Reach(0, 0, 0),
          new JointFix.Rated(1000, 500));

  private static Checked rail(JointFix fix, double notchIn, double windLb, double vinesLb) {
    JointRailChecks.Rail rail =
        new JointRailChecks.Rail(
            BracedExample.timber(1.5, 3.5, 1), BracedExample.timber(3.5, 3.5, 1), notchIn);
    JointRailChecks.Loads loads = new JointRailChecks.Loads(windLb, vinesLb, 200, LENGTH_IN);
    return SmallArbour.byId(new JointRailChecks(rail, loads, JointChecksTest.RULES).of(fix))
        .get("joint.rail");
  }

  @Test
  void the_seat_takes_half_of_the_weight_and_a_whole_person() {
    // (84 · 1.5 · 3.5 · 35/1728 + 60)/2 + 200 = 234.47 lb on 1.5 sq in at 625 psi.
    Checked seat = rail(SCREWED, 1, 0, 60);
    assertThat(seat.combination()).isEqualTo("D+Lr");
    assertThat(seat.check().demand()).isCloseTo(234.466, within(1e-3));
    assertThat(seat.check().capacity()).isCloseTo(937.5, within(1e-9));
    assertThat(rail(SCREWED, 0.5, 0, 60).check().capacity()).isCloseTo(468.75, within(1e-9));
  }

  @Test
  void the_screws_take_half_of_the_wind() {
    Checked side = rail(SCREWED, 1, 600, 0);
    assertThat(side.combination()).isEqualTo("D+0.6W");
    assertThat(side.check().demand()).isCloseTo(180, within(1e-9));
    double bothLb =
        JointHold.of(
                SCREWED, JointChecksTest.RULES.factors(), new JointHold.Wood(0.5, 0.5, 3.5), 1.6)
            .sideLb();
    assertThat(side.check().capacity()).isCloseTo(bothLb, within(1e-9));
  }

  @Test
  void without_a_seat_the_screws_take_the_weight_too() {
    Check alone = rail(SCREWED, 1, 600, 60).check();
    Check loose = rail(SCREWED, 0, 600, 60).check();
    assertThat(loose.ratio()).isGreaterThan(alone.ratio());
    assertThat(rail(SCREWED, 0, 0, 60).check().demand()).isCloseTo(234.466, within(1e-3));
  }

  @Test
  void steel_takes_both_at_once_by_what_it_is_rated_for() {
    // D+0.6W: 4.466 lb of 1000 and 0.6 · 300/2 = 90 of 500; D+Lr: 204.466 of 1000; with 0.75 of
    // both: 154.466 and 67.5.
    Checked steel = rail(ANGLES, 1, 300, 0);
    assertThat(steel.combination()).isEqualTo("D+0.75(0.6W)+0.75Lr");
    assertThat(steel.check().ratio()).isCloseTo(0.154466 + 67.5 / 500, within(1e-5));
  }
}
