package org.scantling.confirm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.scantling.confirm.SmallArbour.assertWorked;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scantling.design.Geometry;
import org.scantling.quantity.Check;
import org.scantling.reasons.Checked;
import org.scantling.timber.Dowel;

/**
 * A 2x4 let down 1/2 in over 4x4 headers, 10.5 in from the next. Wind of 40 lb on its face,
 * strength level: 12 lb on each seat, 1.75 − 0.5 in over it, so 15 in·lb. Wind from below 0.6 ·
 * 31.5 lb less 0.6 · 5.833 lb of timber lifts 15.4 lb off.
 */
class CrossbeamRollTest {
  private static final double WIND_LB = 40;

  /** Two parts, one each face, together rated. */
  private static final JointFix ANGLES =
      new JointFix(
          JointFix.Way.RATED,
          2,
          Dowel.smooth(1, 1),
          new JointFix.Reach(0, 0, 0),
          new JointFix.Rated(1200, 900));

  private static final JointFix NAILS =
      new JointFix(
          JointFix.Way.TOE_NAILED,
          3,
          Dowel.smooth(0.162, 90000),
          new JointFix.Reach(3.5, 0, 0),
          new JointFix.Rated(0, 0));

  private static final JointFix SCREWS =
      new JointFix(
          JointFix.Way.TOE_SCREWED,
          2,
          new Dowel(0.242, 0.196, 70000),
          new JointFix.Reach(4, 2.67, 0),
          new JointFix.Rated(0, 0));

  private static CrossbeamRoll roll(Geometry geometry, double windLb) {
    return new CrossbeamRoll(
        geometry,
        SmallArbour.TWO_BY_FOUR,
        SmallArbour.FOUR_BY_FOUR,
        SmallArbour.TOP,
        windLb,
        new JointRules(JointChecksTest.RULES.factors(), SmallArbour.LIMITS, SmallArbour.SOURCES));
  }

  private static Geometry blocked() {
    Geometry on = SmallArbour.geometry();
    return new Geometry(
        on.plan(),
        on.posts(),
        on.headers(),
        new Geometry.Crossbeams(4, 1.5, 3.5, 12.25, 0.5, 1.5, true, false));
  }

  @Test
  void of_two_angles_the_one_to_windward_holds_it_and_shares_are_added() {
    // 600 lb at 1.5 in; 15 + 900 (15.4/1200 + 12/900).
    Checked checked = roll(SmallArbour.geometry(), WIND_LB).inWind(ANGLES, Optional.empty());
    assertThat(checked.id()).isEqualTo("crossbeam.tipping");
    assertWorked(checked, "0.6D+0.6W", 38.55, 900);
  }

  @Test
  void three_smooth_toe_nails_hold_next_to_nothing_for_they_dry_loose() {
    // NDS 12.2.3: 1380 · 0.55^2.5 · 0.162 = 50.15 lb/in, 1.864 in deep, · 1.6 · 0.25 · 0.67 = 25.06
    // lb.
    // They cross 3.5/3 · tan 30° = 0.674 in from their face: 0.826 in to windward of the edge, or
    // 0.674 in; wind from the side of the one nail: 25.06 (0.826 + 2 · 0.674).
    Checked checked = roll(SmallArbour.geometry(), WIND_LB).inWind(NAILS, Optional.empty());
    assertThat(checked.check().capacity()).isCloseTo(54.47, within(0.05));
    // Lift alone takes 15.4 of 75.2 lb, besides what the side push takes.
    assertThat(checked.check().demand()).isGreaterThan(15 + 54.47 * 15.4 / 75.18);
  }

  @Test
  void the_deeper_the_seat_the_less_the_wind_rolls_it() {
    Geometry on = SmallArbour.geometry();
    Geometry flush =
        new Geometry(
            on.plan(),
            on.posts(),
            on.headers(),
            new Geometry.Crossbeams(4, 1.5, 3.5, 12.25, 0, 1.5));
    // 12 · 1.75 in for 12 · 1.25.
    double deeperInLb =
        roll(flush, WIND_LB).inWind(ANGLES, Optional.empty()).check().demand()
            - roll(on, WIND_LB).inWind(ANGLES, Optional.empty()).check().demand();
    assertThat(deeperInLb).isCloseTo(6, within(0.001));
  }

  @Test
  void blocks_hold_it_by_their_screws_half_way_up() {
    // 2850 · 0.55² · 0.242 = 208.6 lb/in, 2.131 in deep, · 1.6 · 0.7 · 0.67: 333.6 lb each of two;
    // 1.5 in up, half of a block of 3 in, less than 9 − 1.5 in to its far end.
    Checked checked = roll(blocked(), WIND_LB).inWind(NAILS, Optional.of(SCREWS));
    assertWorked(checked, "0.6D+0.6W", 15, 1000.8);
  }

  @Test
  void a_ladder_at_one_in_four_rolls_a_crossbeam_off_its_nails() {
    // 50 lb at 3 in over the seat, less 5.833 · 0.75: 145.6 in·lb. The nails, without wind: 42.55.
    Check check = roll(SmallArbour.geometry(), WIND_LB).underLadder(50, NAILS, Optional.empty());
    assertThat(check.capacity()).isCloseTo(54.47 * 1.25 / 1.6, within(0.05));
    assertThat(check.demand()).isGreaterThan(145.6);
    assertThat(check.ratio()).isGreaterThan(3);
  }

  @Test
  void a_block_weighs_on_the_headers_with_its_crossbeam() {
    // 3 in of 3.5 · 1.5 in, 9 in long: 1.5 · 3 · 9 · 40/1728 = 0.9375 lb on 5.833 lb.
    HeaderLoad without =
        CrossbeamOnHeader.of(SmallArbour.geometry(), SmallArbour.TWO_BY_FOUR, SmallArbour.TOP)
            .load();
    HeaderLoad with =
        CrossbeamOnHeader.of(blocked(), SmallArbour.TWO_BY_FOUR, SmallArbour.TOP).load();
    assertThat(with.deadLb() - without.deadLb()).isCloseTo(0.9375, within(1e-9));
  }
}
