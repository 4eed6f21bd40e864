package org.scantling.tables;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scantling.reasons.Source;

/**
 * A class of soil: what it bears and how it freezes.
 *
 * @param words how a builder tells it in the hand
 * @param verticalBearingPsf allowable foundation pressure
 * @param lateralBearingPsfPerFt allowable side pressure for each foot of depth
 * @param frictionRatio coefficient of friction, where the class has one
 * @param cohesionPsf cohesion, where the class has one
 * @param stiffening how its hold on the side of a post stiffens with the depth; none on rock, which
 *     does not give
 * @param thermal what the frost formula needs; none on rock
 */
public record SoilRow(
    String id,
    String words,
    double verticalBearingPsf,
    double lateralBearingPsfPerFt,
    OptionalDouble frictionRatio,
    OptionalDouble cohesionPsf,
    Optional<Stiffening> stiffening,
    Optional<Thermal> thermal,
    Source source,
    String note)
    implements TableRow {

  static SoilRow read(Row row) {
    return new SoilRow(
        row.text("id"),
        row.text("words"),
        row.positive("vertical_bearing_psf"),
        row.positive("lateral_bearing_psf_per_ft"),
        row.optionalNumber("friction_ratio"),
        row.optionalNumber("cohesion_psf"),
        Stiffening.read(row),
        Thermal.read(row),
        row.source(),
        row.optional("note"));
  }

  /** How fast a soil stiffens sideways with the depth, n_h. */
  public record Stiffening(double lbPerIn3, Source source) {
    static Optional<Stiffening> read(Row row) {
      return row.optional("stiffening_lb_per_in3").isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Stiffening(row.positive("stiffening_lb_per_in3"), row.source("stiffening_")));
    }
  }

  /**
   * How a soil freezes.
   *
   * @param dryDensityPcf dry unit weight
   * @param moisturePercent water in percent of the dry weight
   * @param conductivityBtuPerFtHF mean of frozen and thawed, Btu per foot, hour and degree
   *     Fahrenheit
   */
  public record Thermal(
      double dryDensityPcf, double moisturePercent, double conductivityBtuPerFtHF, Source source) {
    static Optional<Thermal> read(Row row) {
      if (row.optional("dry_density_pcf").isEmpty()
          && row.optional("moisture_percent").isEmpty()
          && row.optional("conductivity_btu_per_ft_h_f").isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          new Thermal(
              row.positive("dry_density_pcf"),
              row.positive("moisture_percent"),
              row.positive("conductivity_btu_per_ft_h_f"),
              row.source("thermal_")));
    }
  }
}
