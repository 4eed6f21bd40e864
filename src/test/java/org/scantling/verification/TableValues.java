package org.scantling.verification;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.scantling.tables.DesignValueRow;
import org.scantling.tables.Factors;
import org.scantling.tables.SoilRow;
import org.scantling.tables.Tables;

/** The program's own tables where print shows the same number. */
final class TableValues {
  /** 1 psi = 6.894 757 kPa. Source: NIST SP 811, 2008 edition, Appendix B.8. */
  private static final double PSI_IN_A_MPA = 1000 / 6.894757;

  private final Tables tables;

  TableValues(Tables tables) {
    this.tables = tables;
  }

  Map<String, ToDoubleFunction<PackRow>> quantities() {
    return Map.ofEntries(
        entry("design value", this::designValue),
        entry("design value in MPa", row -> designValue(row) / PSI_IN_A_MPA),
        entry("adjustment factor", row -> tables.factor(row.text("key")).amount()),
        entry("wet service threshold", this::wetServiceThreshold),
        entry("size factor on tension", this::tensionSizeFactor),
        entry("soil value", this::soilValue),
        entry("lattice force factor", row -> tables.windLattice(row.number("solidity")).amount()),
        entry("wind value", row -> tables.wind(row.text("key")).amount()),
        entry("snow value", row -> tables.snow(row.text("key")).amount()),
        entry(
            "load duration factor",
            row -> tables.factors().loadDuration(row.text("load")).amount()));
  }

  private double designValue(PackRow row) {
    DesignValueRow values =
        tables.designValues(row.text("species"), row.text("grade"), tables.size(row.text("size")));
    return switch (row.text("property")) {
      case "bending" -> values.bendingPsi();
      case "tension" -> values.tensionPsi();
      case "shear" -> values.shearPsi();
      case "bearing" -> values.bearingPsi();
      case "compression" -> values.compressionPsi();
      case "elasticity" -> values.elasticityPsi();
      case "stabilityElasticity" -> values.stabilityElasticityPsi();
      case "specificGravity" -> values.specificGravityRatio();
      default -> throw new IllegalStateException(row + " asks for no design value we hold");
    };
  }

  private double wetServiceThreshold(PackRow row) {
    Factors.WetService wet =
        tables
            .factors()
            .wetService(row.text("species"), tables.size(row.text("size")).memberClass());
    return switch (row.text("property")) {
      case "bending" -> wet.bendingUnityUpToPsi();
      case "compression" -> wet.compressionUnityUpToPsi();
      default -> throw new IllegalStateException(row + " asks for no threshold we hold");
    };
  }

  private double tensionSizeFactor(PackRow row) {
    return tables
        .factors()
        .size(row.text("species"), tables.size(row.text("size")))
        .tensionFactor();
  }

  private double soilValue(PackRow row) {
    SoilRow soil = tables.soil(row.text("soil"));
    return switch (row.text("property")) {
      case "bearing" -> soil.verticalBearingPsf();
      case "lateral" -> soil.lateralBearingPsfPerFt();
      case "friction" -> soil.frictionRatio().orElseThrow();
      case "cohesion" -> soil.cohesionPsf().orElseThrow();
      default -> throw new IllegalStateException(row + " asks for no soil value we hold");
    };
  }
}
