package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class FastenerPropertyTest {
  private static final double SLACK = 1 + 1e-9;

  @Property
  void a_longer_or_harder_hold_never_carries_less_sideways(
      @ForAll @DoubleRange(min = 0.25, max = 1) double diameterIn,
      @ForAll @DoubleRange(min = 0.5, max = 8) double mainIn,
      @ForAll @DoubleRange(min = 0.5, max = 8) double sideIn,
      @ForAll @DoubleRange(min = 1, max = 2) double times) {
    Dowel bolt = Dowel.smooth(diameterIn, 45_000);
    DowelMember main = new DowelMember(mainIn, 4000, 0);
    DowelMember side = new DowelMember(sideIn, 5000, 0);
    double valueLb = YieldLimit.singleShear(bolt, main, side).valueLb();
    DowelMember longer = new DowelMember(mainIn * times, 4000, 0);
    DowelMember harder = new DowelMember(sideIn, 5000 * times, 0);
    assertThat(YieldLimit.singleShear(bolt, longer, side).valueLb() * SLACK)
        .isGreaterThanOrEqualTo(valueLb);
    assertThat(YieldLimit.singleShear(bolt, main, harder).valueLb() * SLACK)
        .isGreaterThanOrEqualTo(valueLb);
    assertThat(YieldLimit.doubleShear(bolt, main, side).valueLb() * SLACK)
        .isGreaterThanOrEqualTo(valueLb);
  }

  @Property
  void swapping_the_pieces_changes_nothing_in_single_shear(
      @ForAll @DoubleRange(min = 0.1, max = 1) double diameterIn,
      @ForAll @DoubleRange(min = 0.5, max = 8) double oneIn,
      @ForAll @DoubleRange(min = 0.5, max = 8) double otherIn,
      @ForAll @DoubleRange(min = 1500, max = 7000) double onePsi,
      @ForAll @DoubleRange(min = 1500, max = 7000) double otherPsi) {
    Dowel dowel = Dowel.smooth(diameterIn, 60_000);
    DowelMember one = new DowelMember(oneIn, onePsi, 30);
    DowelMember other = new DowelMember(otherIn, otherPsi, 60);
    double there = YieldLimit.singleShear(dowel, one, other).valueLb();
    double back = YieldLimit.singleShear(dowel, other, one).valueLb();
    assertThat(back).isBetween(there / SLACK, there * SLACK);
  }

  @Property
  void a_wider_gap_never_carries_more_and_none_carries_what_touching_pieces_do(
      @ForAll @DoubleRange(min = 0.1, max = 1) double diameterIn,
      @ForAll @DoubleRange(min = 0.5, max = 8) double oneIn,
      @ForAll @DoubleRange(min = 0.5, max = 8) double otherIn,
      @ForAll @DoubleRange(min = 1500, max = 7000) double onePsi,
      @ForAll @DoubleRange(min = 1500, max = 7000) double otherPsi,
      @ForAll @DoubleRange(min = 0.01, max = 4) double gapIn) {
    Dowel dowel = Dowel.smooth(diameterIn, 60_000);
    DowelMember one = new DowelMember(oneIn, onePsi, 30);
    DowelMember other = new DowelMember(otherIn, otherPsi, 60);
    LateralValue touching = YieldLimit.singleShear(dowel, one, other);
    LateralValue near = YieldLimit.singleShear(dowel, one, other, gapIn);
    LateralValue far = YieldLimit.singleShear(dowel, one, other, 2 * gapIn);
    LateralValue hair = YieldLimit.singleShear(dowel, one, other, 1e-12);
    for (YieldMode mode : YieldMode.values()) {
      double touchingLb = touching.modesLb().get(mode);
      assertThat(hair.modesLb().get(mode)).isBetween(touchingLb * (1 - 1e-7), touchingLb * SLACK);
      assertThat(near.modesLb().get(mode)).isLessThanOrEqualTo(touchingLb * SLACK);
      assertThat(far.modesLb().get(mode)).isLessThanOrEqualTo(near.modesLb().get(mode) * SLACK);
    }
  }

  @Property
  void group_action_is_above_zero_and_not_above_one_and_never_grows_with_the_row(
      @ForAll @IntRange(min = 1, max = 10) int count,
      @ForAll @DoubleRange(min = 1, max = 8) double spacingIn,
      @ForAll @DoubleRange(min = 0.25, max = 1) double diameterIn,
      @ForAll @DoubleRange(min = 1e6, max = 1e8) double mainLb,
      @ForAll @DoubleRange(min = 1e6, max = 1e8) double sideLb) {
    GroupAction.Row row = GroupAction.Row.inWood(count, spacingIn, diameterIn);
    GroupAction.Row longer = GroupAction.Row.inWood(count + 1, spacingIn, diameterIn);
    double value = GroupAction.of(row, mainLb, sideLb).value();
    assertThat(value).isPositive().isLessThanOrEqualTo(1);
    assertThat(GroupAction.of(longer, mainLb, sideLb).value())
        .isPositive()
        .isLessThanOrEqualTo(value * SLACK);
  }

  @Property
  void a_placement_factor_is_above_zero_and_not_above_one(
      @ForAll @DoubleRange(min = 0.01, max = 20) double distanceIn,
      @ForAll @DoubleRange(min = 0.1, max = 1) double diameterIn) {
    Placement placement = new PlacementRule("end distance", 3.5, 7).at(distanceIn, diameterIn);
    assertThat(placement.factor()).isPositive().isLessThanOrEqualTo(1);
  }
}
