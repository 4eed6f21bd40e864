package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.Adjustments;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Column;
import org.scantling.timber.ColumnStability;
import org.scantling.timber.DesignValues;
import org.scantling.timber.PropertyFactors;
import org.scantling.timber.Rectangle;
import org.scantling.timber.Seat;
import org.scantling.timber.SizeFactors;
import org.scantling.timber.WetService;

/** Worked numbers of books and of the standard's own tables, for beams and columns. */
final class TimberMembers {
  static final Map<String, ToDoubleFunction<PackRow>> QUANTITIES =
      Map.ofEntries(
          entry("tension", row -> adjusted(row).tension().psi()),
          entry("shear value", row -> adjusted(row).shear().psi()),
          entry("column factor", row -> column(row).governing().stabilityFactor()),
          entry("column buckling ratio", row -> bucklingRatio(column(row).governing())),
          entry(
              "column load", row -> column(row).allowable().psi() * section(row).areaIn2() / 1000),
          entry("column value", row -> column(row).allowable().psi()),
          entry("effective length", TimberMembers::effectiveLengthIn),
          entry("beam factor", row -> beamFactor(row.number("criticalToStart"))),
          entry("bearing factor", row -> new Seat(3.5, row.number("lengthIn"), 12).bearingFactor()),
          entry(
              "timber size factor",
              row -> SizeFactors.ofTimber(row.number("depthIn")).bendingFactor()));

  private TimberMembers() {}

  private static AdjustedValues adjusted(PackRow row) {
    double psi = row.number("referencePsi");
    double wet = row.number("wetFactor");
    double size = row.number("sizeFactor", 1);
    DesignValues values = new DesignValues(psi, psi, psi, psi, psi, 1.6e6, 5.8e5, 0.5);
    Adjustments adjustments =
        Adjustments.none()
            .lasting(row.number("durationFactor"))
            .wet(new WetService(new PropertyFactors(wet, wet, wet, wet, wet, wet), 0, 0))
            .sized(new SizeFactors(size, size, size));
    return AdjustedValues.of(values, adjustments);
  }

  private static Rectangle section(PackRow row) {
    return new Rectangle(row.number("breadthIn"), row.number("depthIn"));
  }

  /** Older books buckle by K_cE·E instead of 0.822·E min: E min is what gives the same. */
  private static Column column(PackRow row) {
    double psi = row.number("compressionPsi");
    double elasticity = row.number("elasticityPsi");
    double minimum = row.number("bucklingCoefficient") * elasticity / 0.822;
    DesignValues values = new DesignValues(900, 575, 180, 625, psi, elasticity, minimum, 0.5);
    double lengthIn = row.number("lengthFt") * 12;
    Column.Bracing bracing = new Column.Bracing(lengthIn, lengthIn, row.number("straightness"));
    AdjustedValues adjusted = AdjustedValues.of(values, Adjustments.none());
    return Column.of(1000, section(row), bracing, adjusted);
  }

  private static double bucklingRatio(ColumnStability stability) {
    return stability.criticalStressPsi() / stability.startStressPsi();
  }

  private static double effectiveLengthIn(PackRow row) {
    return BeamLoading.UNIFORM.effectiveLengthIn(row.number("unbracedIn"), row.number("depthIn"));
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
}
