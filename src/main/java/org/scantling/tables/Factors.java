package org.scantling.tables;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scantling.reasons.Source;

/** The adjustment factors of NDS 2018 for a member, picked by species, size and use. */
public final class Factors {
  private static final String SOUTHERN_PINE = "southern-pine";

  private static final Asked FLAT_USE = new Asked("flat-use", "bending", "dimension");
  private static final List<Asked> BY_SIZE =
      Stream.concat(
              Stream.of(FLAT_USE),
              Stream.of("dimension", "southern-pine-dimension")
                  .flatMap(
                      memberClass ->
                          Stream.of("bending", "tension", "compression")
                              .map(property -> new Asked("size", property, memberClass))))
          .toList();

  private final Table<AdjustmentRow> rows;

  /** A factor that depends on the size. */
  private record Asked(String factor, String property, String memberClass) {
    String missing(SizeRow size) {
      return RefusalWords.say(
          "found.no-factor",
          "factor",
          factor,
          "property",
          property,
          "class",
          memberClass,
          "size",
          size.id());
    }
  }

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
    AdjustmentRow bending = pick(new Asked("size", "bending", memberClass), size);
    return new Size(
        bending.amount(),
        pick(new Asked("size", "tension", memberClass), size).amount(),
        pick(new Asked("size", "compression", memberClass), size).amount(),
        pick(FLAT_USE, size).amount(),
        bending.source());
  }

  /** What no row gives for a size, in words; empty where every factor of it is there. */
  Optional<String> missing(SizeRow size) {
    return size.memberClass().timber()
        ? Optional.empty()
        : BY_SIZE.stream()
            .filter(each -> find(each, size).isEmpty())
            .findFirst()
            .map(each -> each.missing(size));
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

  private AdjustmentRow pick(Asked asked, SizeRow size) {
    return find(asked, size)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "adjustment-factors.csv has no " + asked + " for " + size.id()));
  }

  private Optional<AdjustmentRow> find(Asked asked, SizeRow size) {
    return rows.rows().stream()
        .filter(
            row ->
                row.factor().equals(asked.factor())
                    && row.property().equals(asked.property())
                    && row.memberClass().equals(asked.memberClass())
                    && row.nominalThickness().holds(size.nominalThicknessIn())
                    && row.nominalWidth().holds(size.nominalWidthIn()))
        .findFirst();
  }
}
