package org.scantling.verification;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scantling.timber.AdjustedForce;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Adjustments;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Column;
import org.scantling.timber.ColumnStability;
import org.scantling.timber.DesignValues;
import org.scantling.timber.Dowel;
import org.scantling.timber.DowelBearing;
import org.scantling.timber.DowelMember;
import org.scantling.timber.Factor;
import org.scantling.timber.Placement;
import org.scantling.timber.PlacementRule;
import org.scantling.timber.PropertyFactors;
import org.scantling.timber.Rectangle;
import org.scantling.timber.Seat;
import org.scantling.timber.SizeFactors;
import org.scantling.timber.WetService;
import org.scantling.timber.YieldLimit;

/** Worked numbers of books and of the standard's own tables. */
class TimberMembersTest {
  /** NDS 2018, 12.1.6: nails go in 6 diameters at least, 10 for their whole value. */
  private static final PlacementRule NAIL_DEPTH = new PlacementRule("penetration", 6, 10);

  static List<TimberRow> rows() {
    return TimberRow.read("timber-members.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void a_worked_number_comes_out(TimberRow row) {
    row.assertReproducedBy(compute(row.text("quantity"), row.given()));
  }

  private static double compute(String quantity, Map<String, Double> given) {
    return switch (quantity) {
      case "tension" -> adjusted(given).tension().psi();
      case "shear value" -> adjusted(given).shear().psi();
      case "column factor" -> column(given).governing().stabilityFactor();
      case "column buckling ratio" -> bucklingRatio(column(given).governing());
      case "column load" -> column(given).allowable().psi() * section(given).areaIn2() / 1000;
      case "column value" -> column(given).allowable().psi();
      case "effective length" ->
          BeamLoading.UNIFORM.effectiveLengthIn(given.get("unbracedIn"), given.get("depthIn"));
      case "beam factor" -> beamFactor(given.get("criticalToStart"));
      case "bearing factor" -> new Seat(3.5, given.get("lengthIn"), 12).bearingFactor();
      case "timber size factor" -> SizeFactors.ofTimber(given.get("depthIn")).bendingFactor();
      case "nail at part depth" -> nailAtPartDepthLb(given);
      case "nail least depth" -> NAIL_DEPTH.at(1, given.get("diameterIn")).minimumIn();
      case "dowel bearing along" -> bearing(given).alongPsi();
      case "dowel bearing across" -> bearing(given).acrossPsi();
      default -> throw new AssertionError("no computation for " + quantity);
    };
  }

  private static AdjustedValues adjusted(Map<String, Double> given) {
    double psi = given.get("referencePsi");
    double wet = given.get("wetFactor");
    double size = given.getOrDefault("sizeFactor", 1.0);
    DesignValues values = new DesignValues(psi, psi, psi, psi, psi, 1.6e6, 5.8e5, 0.5);
    Adjustments adjustments =
        Adjustments.none()
            .lasting(given.get("durationFactor"))
            .wet(new WetService(new PropertyFactors(wet, wet, wet, wet, wet, wet), 0, 0))
            .sized(new SizeFactors(size, size, size));
    return AdjustedValues.of(values, adjustments);
  }

  private static Rectangle section(Map<String, Double> given) {
    return new Rectangle(given.get("breadthIn"), given.get("depthIn"));
  }

  /** Older books buckle by K_cE·E instead of 0.822·E min: E min is what gives the same. */
  private static Column column(Map<String, Double> given) {
    double psi = given.get("compressionPsi");
    double elasticity = given.get("elasticityPsi");
    double minimum = given.get("bucklingCoefficient") * elasticity / 0.822;
    DesignValues values = new DesignValues(900, 575, 180, 625, psi, elasticity, minimum, 0.5);
    double lengthIn = given.get("lengthFt") * 12;
    Column.Bracing bracing = new Column.Bracing(lengthIn, lengthIn, given.get("straightness"));
    AdjustedValues adjusted = AdjustedValues.of(values, Adjustments.none());
    return Column.of(1000, section(given), bracing, adjusted);
  }

  private static double bucklingRatio(ColumnStability stability) {
    return stability.criticalStressPsi() / stability.startStressPsi();
  }

  /** A beam whose E min gives the wanted F_bE/Fb*. */
  private static double beamFactor(double criticalToStart) {
    Rectangle section = new Rectangle(1.5, 9.25);
    double slenderness2 = 100 * 9.25 / (1.5 * 1.5);
    double minimum = criticalToStart * 900 * slenderness2 / 1.20;
    DesignValues values = new DesignValues(900, 575, 180, 625, 1350, minimum * 3, minimum, 0.5);
    AdjustedValues adjusted = AdjustedValues.of(values, Adjustments.none());
    return BeamStability.of(section, 100, adjusted).stabilityFactor();
  }

  private static DowelBearing bearing(Map<String, Double> given) {
    return DowelBearing.of(given.get("specificGravity"), given.get("diameterIn"));
  }

  /** 16d common through 1-1/2 in into G 0.50, its whole value reduced for the shallow hold. */
  private static double nailAtPartDepthLb(Map<String, Double> given) {
    double diameterIn = given.get("diameterIn");
    DowelBearing bearing = DowelBearing.of(0.50, diameterIn);
    DowelMember side = DowelMember.ofWood(1.5, bearing, 0);
    DowelMember main = DowelMember.ofWood(10 * diameterIn, bearing, 0);
    AdjustedForce whole =
        YieldLimit.singleShear(Dowel.smooth(diameterIn, 90_000), main, side).unadjusted();
    Placement depth = NAIL_DEPTH.at(given.get("penetrationIn"), diameterIn);
    return whole
        .with(new Factor("C_D", given.get("durationFactor")))
        .with(new Factor("p/10D", depth.factor()))
        .lb();
  }
}
