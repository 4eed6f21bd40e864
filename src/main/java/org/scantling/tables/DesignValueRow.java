package org.scantling.tables;

import java.util.List;
import org.scantling.reasons.Source;

/**
 * Reference design values of one species and grade of sawn lumber, before any adjustment.
 *
 * <p>Source: NDS Supplement 2018, Tables 4A, 4B, 4D.
 *
 * @param nominalWidth the nominal widths in inches for which the row holds
 * @param bendingPsi Fb
 * @param tensionPsi Ft
 * @param shearPsi Fv
 * @param bearingPsi Fc across the grain
 * @param compressionPsi Fc along the grain
 * @param elasticityPsi E
 * @param stabilityElasticityPsi Emin
 * @param specificGravityRatio G
 * @param wetWeightPcf weight at 30 percent moisture
 */
public record DesignValueRow(
    String id,
    String species,
    String grade,
    MemberClass memberClass,
    Band nominalWidth,
    double bendingPsi,
    double tensionPsi,
    double shearPsi,
    double bearingPsi,
    double compressionPsi,
    double elasticityPsi,
    double stabilityElasticityPsi,
    double specificGravityRatio,
    double wetWeightPcf,
    Source source,
    String note)
    implements TableRow {

  private static final List<String> GRADES = List.of("Select-Structural", "No.1", "No.2", "No.3");

  static DesignValueRow read(Row row) {
    String grade = grade(row);
    if (row.positive("stability_elasticity_psi") > row.positive("elasticity_psi")) {
      throw row.refuse(
          "stability_elasticity_psi",
          RefusalWords.say("grades.elasticity", "elasticity", row.text("elasticity_psi")));
    }
    return new DesignValueRow(
        row.text("id"),
        row.text("species"),
        grade,
        MemberClass.read(row),
        row.band("width_from_in", "width_to_in"),
        row.positive("bending_psi"),
        row.positive("tension_psi"),
        row.positive("shear_psi"),
        row.positive("bearing_psi"),
        row.positive("compression_psi"),
        row.positive("elasticity_psi"),
        row.positive("stability_elasticity_psi"),
        row.positive("specific_gravity_ratio"),
        row.positive("wet_weight_pcf"),
        row.source(),
        row.optional("note"));
  }

  private static String grade(Row row) {
    String grade = row.text("grade");
    if (!GRADES.contains(grade)) {
      throw row.refuse(
          "grade",
          RefusalWords.say(
              "grades.known",
              "grades",
              String.join(", ", GRADES),
              "why",
              OtherGrades.why(grade).orElse("")));
    }
    return grade;
  }
}
