package org.scantling.judge;

import java.util.Map;

/**
 * What a timber is allowed outdoors, before the factor of the load: NDS 2018 Table 4.3.1 with the
 * wet-service, size and incising factors of the supplement's Tables 4A, 4B and 4D and of 4.3.8,
 * written here from memory and not read from the program's tables.
 *
 * @param bendingPsi Fb CM CF Ci, loaded on edge
 * @param shearPsi Fv CM Ci
 * @param bearingPsi Fc-perpendicular CM
 * @param compressionPsi Fc CM CF Ci
 * @param tensionPsi Ft CM CF Ci
 * @param elasticityPsi E CM Ci
 * @param bucklingPsi Emin CM Ci
 * @param gravityRatio specific gravity for joints
 * @param weightPcf wet weight
 */
record Wood(
    double bendingPsi,
    double shearPsi,
    double bearingPsi,
    double compressionPsi,
    double tensionPsi,
    double elasticityPsi,
    double bucklingPsi,
    double gravityRatio,
    double weightPcf) {

  static Wood of(String species, String grade, Stock size) {
    Map<String, String> row = row(species, grade, size);
    boolean southern = species.equals("southern-pine");
    boolean incised =
        size.dimension() && Tables.row("defaults", "incised." + species).get("word").equals("yes");
    double strength = incised ? 0.8 : 1;
    double stiffness = incised ? 0.95 : 1;
    double fb = Tables.number(row, "bending_psi") * bendingSize(size, southern);
    double fc = Tables.number(row, "compression_psi") * compressionSize(size, southern);
    boolean dimension = size.dimension();
    return new Wood(
        fb * strength * (dimension ? fb <= 1150 ? 1 : 0.85 : 1),
        Tables.number(row, "shear_psi") * strength * (dimension ? 0.97 : 1),
        Tables.number(row, "bearing_psi") * (dimension || !southern ? 0.67 : 1),
        fc * strength * (dimension ? fc <= 750 ? 1 : 0.8 : southern ? 1 : 0.91),
        Tables.number(row, "tension_psi") * tensionSize(size, southern) * strength,
        Tables.number(row, "elasticity_psi") * stiffness * (dimension ? 0.9 : 1),
        Tables.number(row, "stability_elasticity_psi") * stiffness * (dimension ? 0.9 : 1),
        Tables.number(row, "specific_gravity_ratio"),
        Tables.number(row, "wet_weight_pcf"));
  }

  private static Map<String, String> row(String species, String grade, Stock size) {
    return Tables.rows("design-values").stream()
        .filter(each -> each.get("species").equals(species))
        .filter(each -> each.get("grade").equals(grade))
        .filter(each -> each.get("member_class").equals(size.kind()))
        .filter(each -> Tables.number(each, "width_from_in") <= size.nominalDepthIn())
        .filter(each -> Tables.number(each, "width_to_in") >= size.nominalDepthIn())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(species + " " + grade + " " + size.id()));
  }

  private static double bendingSize(Stock size, boolean southern) {
    double wide = size.nominalDepthIn();
    boolean thick = size.nominalThicknessIn() >= 4;
    if (!size.dimension()) {
      return size.depthIn() > 12 ? Math.pow(12 / size.depthIn(), 1.0 / 9) : 1;
    }
    if (southern) {
      return wide > 12 ? 0.9 : thick && wide >= 8 ? 1.1 : 1;
    }
    return wide <= 4
        ? 1.5
        : wide <= 5
            ? 1.4
            : wide <= 6
                ? 1.3
                : wide <= 8
                    ? thick ? 1.3 : 1.2
                    : wide <= 10 ? thick ? 1.2 : 1.1 : wide <= 12 ? thick ? 1.1 : 1 : 0.9;
  }

  private static double tensionSize(Stock size, boolean southern) {
    double wide = size.nominalDepthIn();
    if (!size.dimension()) {
      return 1;
    }
    if (southern) {
      return wide > 12 ? 0.9 : 1;
    }
    return wide <= 4
        ? 1.5
        : wide <= 5
            ? 1.4
            : wide <= 6 ? 1.3 : wide <= 8 ? 1.2 : wide <= 10 ? 1.1 : wide <= 12 ? 1 : 0.9;
  }

  private static double compressionSize(Stock size, boolean southern) {
    double wide = size.nominalDepthIn();
    if (!size.dimension()) {
      return 1;
    }
    if (southern) {
      return wide > 12 ? 0.9 : 1;
    }
    return wide <= 4 ? 1.15 : wide <= 6 ? 1.1 : wide <= 8 ? 1.05 : wide <= 12 ? 1 : 0.9;
  }

  /** C_L of 3.3.3 for a span held at its ends only, uniform load. */
  double beamStability(Stock size, double unbracedIn, double duration) {
    double rb = beamSlenderness(size, unbracedIn);
    if (size.depthIn() <= size.thicknessIn()) {
      return 1;
    }
    double ratio = 1.2 * bucklingPsi / (rb * rb) / (bendingPsi * duration);
    double mean = (1 + ratio) / 1.9;
    return mean - Math.sqrt(mean * mean - ratio / 0.95);
  }

  double beamSlenderness(Stock size, double unbracedIn) {
    double effective =
        unbracedIn / size.depthIn() < 7
            ? 2.06 * unbracedIn
            : 1.63 * unbracedIn + 3 * size.depthIn();
    return Math.sqrt(effective * size.depthIn()) / size.thicknessIn();
  }

  double eulerPsi(double effectiveIn, double breadthIn) {
    return 0.822 * bucklingPsi / Math.pow(effectiveIn / breadthIn, 2);
  }

  /** Fc' = Fc* CD CP of 3.7.1, sawn timber. */
  double columnPsi(double effectiveIn, double breadthIn, double duration) {
    double star = compressionPsi * duration;
    double ratio = eulerPsi(effectiveIn, breadthIn) / star;
    double mean = (1 + ratio) / 1.6;
    return star * (mean - Math.sqrt(mean * mean - ratio / 0.8));
  }

  double ownLbPerIn(Stock size) {
    return weightPcf * size.areaIn2() / 1728;
  }
}
