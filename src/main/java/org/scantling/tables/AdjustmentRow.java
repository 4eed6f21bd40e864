package org.scantling.tables;

import java.util.OptionalDouble;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Source;

/**
 * One adjustment factor or limit of the timber standard.
 *
 * @param factor family, such as load-duration, wet-service, size, flat-use, creep
 * @param property bending, tension, shear, bearing, compression, elasticity, lateral, withdrawal,
 *     deflection or any
 * @param memberClass dimension, southern-pine-dimension, timber, southern-pine-timber, beam-timber
 *     or any
 * @param condition when it holds, in words
 * @param nominalThickness nominal thicknesses in inches for which it holds
 * @param nominalWidth nominal widths in inches for which it holds
 * @param unityUpToPsi the factor is 1.0 while the value times its size factor is not above this
 * @param measure the factor, or the limit with its unit
 */
public record AdjustmentRow(
    String id,
    String factor,
    String property,
    String memberClass,
    String condition,
    Band nominalThickness,
    Band nominalWidth,
    OptionalDouble unityUpToPsi,
    Measure measure,
    Source source,
    String note)
    implements TableRow {

  static AdjustmentRow read(Row row) {
    return new AdjustmentRow(
        row.text("id"),
        row.text("factor"),
        row.oneOf(
            "property",
            "bending",
            "tension",
            "shear",
            "bearing",
            "compression",
            "elasticity",
            "lateral",
            "withdrawal",
            "deflection",
            "any"),
        row.oneOf(
            "member_class",
            "dimension",
            "southern-pine-dimension",
            "timber",
            "southern-pine-timber",
            "beam-timber",
            "any"),
        row.text("condition"),
        row.band("nominal_thickness_from_in", "nominal_thickness_to_in"),
        row.band("nominal_width_from_in", "nominal_width_to_in"),
        row.optionalNumber("unity_up_to_psi"),
        row.measure(),
        row.source(),
        row.optional("note"));
  }

  /** The bare number, in the unit of {@link #measure()}. */
  public double amount() {
    return measure.amount();
  }
}
