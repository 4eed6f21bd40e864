package org.scantling.tables;

import org.scantling.reasons.Source;

/** The adjustment factors of NDS 2018 for a member, picked by species, size and use. */
public final class Factors {
  private static final String SOUTHERN_PINE = "southern-pine";

  private final Table<AdjustmentRow> rows;

  Factors(Table<AdjustmentRow> rows) {
    this.rows = rows;
  }

  /**
   * C_F and C_fu of a size.
   *
   * @param bendingFactor on Fb, loaded on edge
   * @param tensionFactor on Ft
   * @param compressionFactor on Fc
   * @param flatUseFactor on Fb, loaded on the wide face
   */
  public record Size(
      double bendingFactor,
      double tensionFactor,
      double compressionFactor,
      double flatUseFactor,
      Source source) {}

  /**
   * C_M of a class of timber.
   *
   * @param bendingUnityUpToPsi bending keeps 1.0 while Fb times C_F is not above this; 0 for never
   * @param compressionUnityUpToPsi the same for Fc
   */
  public record WetService(
      double bendingFactor,
      double tensionFactor,
      double shearFactor,
      double bearingFactor,
      double compressionFactor,
      double elasticityFactor,
      double bendingUnityUpToPsi,
      double compressionUnityUpToPsi,
      Source source) {}

  /**
   * C_i: incised dimension lumber; all 1 for timbers.
   *
   * @param strengthFactor on Fb, Ft, Fv and Fc
   * @param bearingFactor on Fc across the grain
   * @param elasticityFactor on E and Emin
   */
  public record Incising(
      double strengthFactor, double bearingFactor, double elasticityFactor, Source source) {}

  /**
   * C_D.
   *
   * @param load dead, snow, roof-live, wind or impact
   */
  public AdjustmentRow loadDuration(String load) {
    return rows.row("load-duration." + load);
  }

  /** C_F and C_fu. Source: NDS Supplement 2018, Tables 4A, 4B and 4D; NDS 2018, 4.3.6. */
  public Size size(String species, SizeRow size) {
    if (size.memberClass().timber()) {
      AdjustmentRow full = rows.row("size.timber.full-depth");
      double root = rows.row("size.timber.root").amount();
      double bending =
          size.widthIn() > full.amount() ? Math.pow(full.amount() / size.widthIn(), 1 / root) : 1;
      return new Size(bending, 1, 1, 1, full.source());
    }
    String memberClass = species.equals(SOUTHERN_PINE) ? "southern-pine-dimension" : "dimension";
    AdjustmentRow bending = pick("size", "bending", memberClass, size);
    return new Size(
        bending.amount(),
        pick("size", "tension", memberClass, size).amount(),
        pick("size", "compression", memberClass, size).amount(),
        pick("flat-use", "bending", "dimension", size).amount(),
        bending.source());
  }

  /** C_M outdoors. Source: NDS Supplement 2018, Tables 4A, 4B and 4D. */
  public WetService wetService(String species, MemberClass memberClass) {
    String head =
        "wet-service."
            + (species.equals(SOUTHERN_PINE) ? "southern-pine-" : "")
            + (memberClass.timber() ? "timber" : "dimension")
            + ".";
    AdjustmentRow bending = rows.row(head + "bending");
    AdjustmentRow compression = rows.row(head + "compression");
    return new WetService(
        bending.amount(),
        rows.row(head + "tension").amount(),
        rows.row(head + "shear").amount(),
        rows.row(head + "bearing").amount(),
        compression.amount(),
        rows.row(head + "elasticity").amount(),
        bending.unityUpToPsi().orElse(0),
        compression.unityUpToPsi().orElse(0),
        bending.source());
  }

  /** C_i. Source: NDS 2018, Table 4.3.8. */
  public Incising incising(MemberClass memberClass) {
    AdjustmentRow strength = rows.row("incising.bending");
    if (memberClass.timber()) {
      return new Incising(1, 1, 1, strength.source());
    }
    return new Incising(
        strength.amount(),
        rows.row("incising.bearing").amount(),
        rows.row("incising.elasticity").amount(),
        strength.source());
  }

  private AdjustmentRow pick(String factor, String property, String memberClass, SizeRow size) {
    for (AdjustmentRow row : rows.rows()) {
      if (row.factor().equals(factor)
          && row.property().equals(property)
          && row.memberClass().equals(memberClass)
          && row.nominalThickness().holds(size.nominalThicknessIn())
          && row.nominalWidth().holds(size.nominalWidthIn())) {
        return row;
      }
    }
    throw new IllegalArgumentException(
        "adjustment-factors.csv has no " + factor + " factor on " + property + " for " + size.id());
  }
}
