package org.scantling.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class FastenerTest {
  private static final DowelBearing FIR = DowelBearing.of(0.50, 0.5);
  private static final Dowel HALF_INCH = Dowel.smooth(0.5, 45_000);

  private static DowelMember fir(double lengthIn, double angleDegrees) {
    return DowelMember.ofWood(lengthIn, FIR, angleDegrees);
  }

  @Test
  void thick_dowels_feel_the_grain_and_thin_ones_do_not() {
    // NDS 2018 Table 12.3.3, from memory
    assertThat(FIR.alongPsi()).isEqualTo(5600);
    assertThat(FIR.acrossPsi()).isEqualTo(3150);
    assertThat(DowelBearing.of(0.50, 0.162).alongPsi()).isEqualTo(4650);
    assertThat(DowelBearing.of(0.50, 0.162).acrossPsi()).isEqualTo(4650);
    assertThat(DowelBearing.of(0.50, 0.25).acrossPsi()).isEqualTo(4450);
    assertThat(FIR.atPsi(0)).isCloseTo(5600, within(1e-9));
    assertThat(FIR.atPsi(45)).isCloseTo(4032, within(0.5));
    assertThat(FIR.atPsi(90)).isCloseTo(3150, within(1e-9));
  }

  @Test
  void single_shear_shows_all_six_modes() {
    LateralValue value = YieldLimit.singleShear(HALF_INCH, fir(1.5, 0), fir(1.5, 0));
    assertThat(value.modesLb()).containsOnlyKeys(YieldMode.values());
    assertThat(value.governing()).isEqualTo(YieldMode.TILTS);
    assertThat(value.valueLb()).isCloseTo(483, within(0.5));
    // written out: D l Fe/4, 0.4142 D l Fe/3.6, and the bending modes with 2 Fyb/(3 Fe)
    double crushedLb = 0.5 * 1.5 * 5600;
    double yield = 2 * 45_000.0 / (3 * 5600) * 3 * 0.25 / 2.25;
    double k = Math.sqrt(4 + yield) - 1;
    assertThat(value.modesLb().get(YieldMode.MAIN_CRUSHES)).isCloseTo(crushedLb / 4, within(1e-9));
    assertThat(value.modesLb().get(YieldMode.SIDE_CRUSHES)).isCloseTo(crushedLb / 4, within(1e-9));
    assertThat(value.modesLb().get(YieldMode.TILTS))
        .isCloseTo(crushedLb * (Math.sqrt(2) - 1) / 3.6, within(1e-9));
    assertThat(value.modesLb().get(YieldMode.BENDS_TILTING_IN_MAIN))
        .isCloseTo(crushedLb * k / 3 / 3.2, within(1e-9));
    assertThat(value.modesLb().get(YieldMode.BENDS_TILTING_IN_SIDE))
        .isCloseTo(crushedLb * k / 3 / 3.2, within(1e-9));
    assertThat(value.modesLb().get(YieldMode.BENDS_TWICE))
        .isCloseTo(0.25 / 3.2 * Math.sqrt(2 * 5600 * 45_000.0 / 6), within(1e-9));
    assertThat(value.k1()).isCloseTo(Math.sqrt(2) - 1, within(1e-12));
    assertThat(value.k2()).isCloseTo(k, within(1e-12));
    assertThat(value.k3()).isCloseTo(k, within(1e-12));
    assertThat(value.bearingRatio()).isEqualTo(1);
    assertThat(value.lengthRatio()).isEqualTo(1);
  }

  /** AWC Technical Report 12, Table 1-1, from memory; the tilting mode written out. */
  @Test
  void a_gap_lengthens_the_arm_of_every_mode_but_the_crushing_ones() {
    LateralValue touching = YieldLimit.singleShear(HALF_INCH, fir(1.5, 0), fir(1.5, 0));
    LateralValue apart = YieldLimit.singleShear(HALF_INCH, fir(1.5, 0), fir(1.5, 0), 0.5);
    // q = 2800 lb/in; P^2 / 5600 + 2 P = 3150 gives 1400 lb, less its reduction of 3.6.
    assertThat(apart.governing()).isEqualTo(YieldMode.TILTS);
    assertThat(apart.valueLb()).isCloseTo(1400 / 3.6, within(1e-9));
    // M = 937.5 in-lb; P^2 / 2800 + 0.5 P = 1875.
    double bentLb = (Math.sqrt(0.25 + 4 * 1875 / 2800.0) - 0.5) * 1400;
    assertThat(apart.modesLb().get(YieldMode.BENDS_TWICE)).isCloseTo(bentLb / 3.2, within(1e-9));
    // P^2 (3 / 11200) + 1.25 P = 937.5 + 1575, the same from either side.
    double onceLb = (Math.sqrt(1.5625 + 4 * 2512.5 * 3 / 11200) - 1.25) * 11200 / 6;
    assertThat(apart.modesLb().get(YieldMode.BENDS_TILTING_IN_MAIN))
        .isCloseTo(onceLb / 3.2, within(1e-9));
    assertThat(apart.modesLb().get(YieldMode.BENDS_TILTING_IN_SIDE))
        .isCloseTo(onceLb / 3.2, within(1e-9));
    assertThat(apart.modesLb().get(YieldMode.MAIN_CRUSHES))
        .isEqualTo(touching.modesLb().get(YieldMode.MAIN_CRUSHES));
    assertThat(apart.modesLb().get(YieldMode.SIDE_CRUSHES))
        .isEqualTo(touching.modesLb().get(YieldMode.SIDE_CRUSHES));
  }

  @Test
  void pieces_cannot_overlap() {
    assertThatThrownBy(() -> YieldLimit.singleShear(HALF_INCH, fir(1.5, 0), fir(1.5, 0), -0.1))
        .hasMessageContaining("gap between the pieces");
  }

  @Test
  void double_shear_has_four_modes_and_doubles_the_side_ones() {
    LateralValue twofold = YieldLimit.doubleShear(HALF_INCH, fir(3.5, 0), fir(1.5, 0));
    LateralValue once = YieldLimit.singleShear(HALF_INCH, fir(3.5, 0), fir(1.5, 0));
    assertThat(twofold.valueLb()).isCloseTo(1230, within(0.5));
    assertThat(twofold.governing()).isEqualTo(YieldMode.BENDS_TILTING_IN_SIDE);
    assertThat(twofold.modesLb())
        .containsOnlyKeys(
            YieldMode.MAIN_CRUSHES,
            YieldMode.SIDE_CRUSHES,
            YieldMode.BENDS_TILTING_IN_SIDE,
            YieldMode.BENDS_TWICE);
    assertThat(twofold.modesLb().get(YieldMode.MAIN_CRUSHES))
        .isEqualTo(once.modesLb().get(YieldMode.MAIN_CRUSHES));
    assertThat(twofold.modesLb().get(YieldMode.SIDE_CRUSHES))
        .isEqualTo(2 * once.modesLb().get(YieldMode.SIDE_CRUSHES));
    assertThat(twofold.modesLb().get(YieldMode.BENDS_TWICE))
        .isEqualTo(2 * once.modesLb().get(YieldMode.BENDS_TWICE));
  }

  @Test
  void the_steepest_angle_of_either_piece_reduces_every_mode() {
    DowelMember plain = new DowelMember(1.5, 5000, 0);
    DowelMember steep = new DowelMember(1.5, 5000, 90);
    double along = YieldLimit.singleShear(HALF_INCH, plain, plain).valueLb();
    assertThat(YieldLimit.singleShear(HALF_INCH, steep, plain).valueLb())
        .isCloseTo(along / 1.25, within(1e-9));
    assertThat(YieldLimit.singleShear(HALF_INCH, plain, steep).valueLb())
        .isCloseTo(along / 1.25, within(1e-9));
    DowelMember half = new DowelMember(1.5, 5000, 45);
    assertThat(YieldLimit.singleShear(HALF_INCH, half, plain).valueLb())
        .isCloseTo(along / 1.125, within(1e-9));
  }

  @Test
  void a_thin_shank_takes_one_reduction_for_all_modes() {
    assertThat(crushing(Dowel.smooth(0.17, 90_000)))
        .isCloseTo(0.17 * 1.5 * 5000 / 2.2, within(1e-9));
    assertThat(crushing(Dowel.smooth(0.192, 80_000)))
        .isCloseTo(0.192 * 1.5 * 5000 / 2.42, within(1e-9));
    assertThat(crushing(Dowel.smooth(0.25, 70_000))).isCloseTo(0.25 * 1.5 * 5000 / 5, within(1e-9));
  }

  @Test
  void a_screw_of_a_quarter_inch_with_a_thin_root_takes_both_reductions() {
    // NDS 2018 Table 12.3.1B, note, from memory
    Dowel lag = new Dowel(0.25, 0.173, 70_000);
    assertThat(crushing(lag)).isCloseTo(0.173 * 1.5 * 5000 / (2.23 * 1.25), within(1e-9));
  }

  private static double crushing(Dowel dowel) {
    DowelMember steep = new DowelMember(1.5, 5000, 90);
    return YieldLimit.singleShear(dowel, steep, steep).modesLb().get(YieldMode.MAIN_CRUSHES);
  }

  @Test
  void fasteners_refuse_what_cannot_be_driven() {
    assertThatThrownBy(() -> Dowel.smooth(1.25, 45_000))
        .hasMessage("fastener diameter 1.25 in must be from 0.0 to 1.0");
    assertThatThrownBy(() -> Dowel.smooth(0, 45_000))
        .hasMessage("fastener diameter 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new Dowel(0.25, 0.3, 45_000))
        .hasMessage("shank diameter 0.3 in must be from 0.0 to 0.25");
    assertThatThrownBy(() -> new Dowel(0.25, 0.2, 0))
        .hasMessage("bending yield Fyb 0.0 psi must be above zero and finite");
    assertThatThrownBy(() -> new DowelMember(0, 5000, 0))
        .hasMessage("length of the fastener in the piece 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> new DowelMember(1, 0, 0))
        .hasMessage("dowel bearing strength 0.0 psi must be above zero and finite");
    assertThatThrownBy(() -> new DowelMember(1, 5000, 91))
        .hasMessage("angle to the grain 91.0 degrees must be from 0.0 to 90.0");
    assertThatThrownBy(() -> DowelBearing.of(0, 0.5))
        .hasMessage("specific gravity 0.0 must be above zero and finite");
    assertThatThrownBy(() -> DowelBearing.of(33.6, 0.5))
        .hasMessage("specific gravity 33.6 must be below 1.5");
  }

  @Test
  void withdrawal_grows_with_grip() {
    assertThat(Withdrawal.ofNail(0.5, 0.162, 2).perInchLb()).isCloseTo(39.5, within(0.05));
    assertThat(Withdrawal.ofNail(0.5, 0.162, 2).unadjusted().lb()).isCloseTo(79.0, within(0.1));
    assertThat(Withdrawal.ofLag(0.5, 0.5, 3).perInchLb()).isCloseTo(378, within(0.5));
    assertThat(Withdrawal.ofWoodScrew(0.5, 0.190, 1).perInchLb()).isCloseTo(135, within(0.5));
    assertThatThrownBy(() -> Withdrawal.ofNail(0.5, 0.162, 0))
        .hasMessage("grip of the fastener 0.0 in must be above zero and finite");
    assertThatThrownBy(() -> Withdrawal.ofLag(-0.5, 0.162, 1))
        .hasMessage("specific gravity -0.5 must be above zero and finite");
    assertThatThrownBy(() -> Withdrawal.ofWoodScrew(0.5, 0, 1))
        .hasMessage("fastener diameter 0.0 in must be above zero and finite");
  }

  @Test
  void a_joint_carries_its_fasteners_times_their_adjusted_value() {
    AdjustedForce bolt = new AdjustedForce("Z", 480, List.of()).with(new Factor("C_D", 1.6));
    assertThat(bolt.lb()).isCloseTo(768, within(1e-9));
    Connection two = new Connection(768, bolt, 2);
    assertThat(two.capacityLb()).isCloseTo(1536, within(1e-9));
    assertThat(two.check().ratio()).isCloseTo(0.5, within(1e-12));
    assertThat(new Connection(1, new AdjustedForce("Z", 480, List.of()), 2).capacityLb())
        .isCloseTo(960, within(1e-9));
    Connection pulled = new Connection(50, new AdjustedForce("W", 80, List.of()), 1);
    assertThat(Connection.together(two, pulled).ratio()).isCloseTo(1.125, within(1e-12));
    assertThatThrownBy(() -> new Connection(1, bolt, 0))
        .hasMessage("a joint of 0 fasteners must have 1 or more");
    assertThatThrownBy(() -> new Connection(-1, bolt, 1))
        .hasMessage("force on the joint -1.0 lb must be zero or more and finite");
    assertThatThrownBy(() -> new AdjustedForce("Z", 0, List.of()))
        .hasMessage("Z 0.0 lb must be above zero and finite");
  }

  @Test
  void a_toe_nail_lies_a_third_in_the_piece_it_starts_in() {
    ToeNail nail = new ToeNail(3.5);
    assertThat(nail.sideIn()).isCloseTo(1.17, within(0.005));
    assertThat(nail.penetrationIn()).isCloseTo(1.86, within(0.005));
    assertThatThrownBy(() -> new ToeNail(0))
        .hasMessage("nail length 0.0 in must be above zero and finite");
  }
}
