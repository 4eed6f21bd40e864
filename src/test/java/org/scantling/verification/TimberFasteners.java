package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.scantling.timber.AdjustedForce;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.Factor;
import org.scantling.timber.LateralValue;
import org.scantling.timber.Placement;
import org.scantling.timber.PlacementRule;
import org.scantling.timber.Withdrawal;
import org.scantling.timber.YieldLimit;

/** The standard's tables of bolts, nails and lag screws. */
final class TimberFasteners {
  /** NDS 2018, 12.1.6: nails go in 6 diameters at least, 10 for their whole value. */
  private static final PlacementRule NAIL_DEPTH = new PlacementRule("penetration", 6, 10);

  static final Map<String, ToDoubleFunction<PackRow>> QUANTITIES =
      Map.ofEntries(
          entry("bolt", TimberFasteners::boltLb),
          entry("nail", TimberFasteners::nailLb),
          entry("lag withdrawal", TimberFasteners::lagLbPerIn),
          entry("nail withdrawal", TimberFasteners::nailLbPerIn),
          entry("nail at part depth", TimberFasteners::nailAtPartDepthLb),
          entry("nail least depth", row -> NAIL_DEPTH.at(1, row.number("diameterIn")).minimumIn()),
          entry("dowel bearing along", row -> bearing(row).alongPsi()),
          entry("dowel bearing across", row -> bearing(row).acrossPsi()));

  private TimberFasteners() {}

  private static double boltLb(PackRow row) {
    DowelMember main =
        DowelMember.ofWood(row.number("mainIn"), bearing(row), row.number("mainAngleDegrees"));
    DowelMember side =
        DowelMember.ofWood(row.number("sideIn"), bearing(row), row.number("sideAngleDegrees"));
    Dowel bolt = Dowel.smooth(row.number("diameterIn"), row.number("bendingYieldPsi"));
    return inTheModeOf(
        row,
        row.text("shear").equals("single")
            ? YieldLimit.singleShear(bolt, main, side)
            : YieldLimit.doubleShear(bolt, main, side));
  }

  private static double nailLb(PackRow row) {
    double sideIn = row.number("sideIn");
    DowelMember main = DowelMember.ofWood(row.number("lengthIn") - sideIn, bearing(row), 0);
    DowelMember side = DowelMember.ofWood(sideIn, bearing(row), 0);
    Dowel nail = Dowel.smooth(row.number("diameterIn"), row.number("bendingYieldPsi"));
    return inTheModeOf(row, YieldLimit.singleShear(nail, main, side));
  }

  /** The value, when the mode is the row's as well: a right number in a wrong mode is luck. */
  private static double inTheModeOf(PackRow row, LateralValue value) {
    String mode = value.governing().numeral();
    if (!mode.equals(row.text("mode"))) {
      throw new AssertionError(row + ": mode " + row.text("mode") + " expected, ours is " + mode);
    }
    return value.valueLb();
  }

  private static double lagLbPerIn(PackRow row) {
    return Withdrawal.ofLag(row.number("specificGravity"), row.number("diameterIn"), 1).perInchLb();
  }

  private static double nailLbPerIn(PackRow row) {
    return Withdrawal.ofNail(row.number("specificGravity"), row.number("diameterIn"), 1)
        .perInchLb();
  }

  private static DowelBearing bearing(PackRow row) {
    return DowelBearing.of(row.number("specificGravity"), row.number("diameterIn"));
  }

  /** 16d common through 1-1/2 in into G 0.50, its whole value reduced for the shallow hold. */
  private static double nailAtPartDepthLb(PackRow row) {
    double diameterIn = row.number("diameterIn");
    DowelBearing bearing = DowelBearing.of(0.50, diameterIn);
    DowelMember side = DowelMember.ofWood(1.5, bearing, 0);
    DowelMember main = DowelMember.ofWood(10 * diameterIn, bearing, 0);
    AdjustedForce whole =
        YieldLimit.singleShear(Dowel.smooth(diameterIn, 90_000), main, side).unadjusted();
    Placement depth = NAIL_DEPTH.at(row.number("penetrationIn"), diameterIn);
    return whole
        .with(new Factor("C_D", row.number("durationFactor")))
        .with(new Factor("p/10D", depth.factor()))
        .lb();
  }
}
