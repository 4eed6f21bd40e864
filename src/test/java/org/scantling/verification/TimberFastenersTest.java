package org.scantling.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.LateralValue;
import org.scantling.timber.Withdrawal;
import org.scantling.timber.YieldLimit;

/** The standard's tables of bolts, nails and lag screws. */
class TimberFastenersTest {
  static List<TimberRow> bolts() {
    return TimberRow.read("timber-bolts.csv");
  }

  static List<TimberRow> nails() {
    return TimberRow.read("timber-nails.csv");
  }

  static List<TimberRow> withdrawals() {
    return TimberRow.read("timber-withdrawal.csv");
  }

  @ParameterizedTest
  @MethodSource("bolts")
  void a_bolt_carries_what_the_table_says(TimberRow row) {
    double diameterIn = row.number("diameterIn");
    DowelBearing bearing = DowelBearing.of(row.number("specificGravity"), diameterIn);
    DowelMember main =
        DowelMember.ofWood(row.number("mainIn"), bearing, row.number("mainAngleDegrees"));
    DowelMember side =
        DowelMember.ofWood(row.number("sideIn"), bearing, row.number("sideAngleDegrees"));
    Dowel bolt = Dowel.smooth(diameterIn, row.number("bendingYieldPsi"));
    LateralValue value =
        row.text("shear").equals("single")
            ? YieldLimit.singleShear(bolt, main, side)
            : YieldLimit.doubleShear(bolt, main, side);
    row.assertReproducedBy(value.valueLb());
    assertThat(value.governing().numeral()).as("%s", row).isEqualTo(row.text("expectedMode"));
  }

  @ParameterizedTest
  @MethodSource("nails")
  void a_nail_carries_what_the_table_says(TimberRow row) {
    double diameterIn = row.number("diameterIn");
    double sideIn = row.number("sideIn");
    DowelBearing bearing = DowelBearing.of(row.number("specificGravity"), diameterIn);
    DowelMember main = DowelMember.ofWood(row.number("lengthIn") - sideIn, bearing, 0);
    DowelMember side = DowelMember.ofWood(sideIn, bearing, 0);
    Dowel nail = Dowel.smooth(diameterIn, row.number("bendingYieldPsi"));
    LateralValue value = YieldLimit.singleShear(nail, main, side);
    row.assertReproducedBy(value.valueLb());
    assertThat(value.governing().numeral()).as("%s", row).isEqualTo(row.text("expectedMode"));
  }

  @ParameterizedTest
  @MethodSource("withdrawals")
  void a_fastener_holds_against_pulling_out_what_the_table_says(TimberRow row) {
    double gravity = row.number("specificGravity");
    double diameterIn = row.number("diameterIn");
    Withdrawal withdrawal =
        row.text("fastener").equals("lag")
            ? Withdrawal.ofLag(gravity, diameterIn, 1)
            : Withdrawal.ofNail(gravity, diameterIn, 1);
    row.assertReproducedBy(withdrawal.perInchLb());
  }
}
