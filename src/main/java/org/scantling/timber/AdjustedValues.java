package org.scantling.timber;

import java.util.List;

/**
 * All design values of a piece after adjustment, each with the factors that made it.
 *
 * <p>C_L, C_P and C_b are not in here: they depend on length and seat, and the checks that need
 * them add them.
 *
 * @param bending Fb' before C_L
 * @param tension Ft'
 * @param shear Fv'
 * @param bearing Fc perpendicular before C_b
 * @param compression Fc*, that is Fc before C_P
 * @param elasticity E'
 * @param elasticityMinimum E min'
 */
public record AdjustedValues(
    AdjustedStress bending,
    AdjustedStress tension,
    AdjustedStress shear,
    AdjustedStress bearing,
    AdjustedStress compression,
    AdjustedStress elasticity,
    AdjustedStress elasticityMinimum) {
  static final String FLAT_USE = "C_fu";

  /**
   * What each design value comes to with these adjustments.
   *
   * <p>Load duration raises or lowers strength but never bearing across the grain, E or E min.
   *
   * @param reference the tabulated values
   * @param adjustments what applies to the piece and its load
   * @return the adjusted values
   *     <p>Source: NDS, 2018, Table 4.3.1. Worked: Fb 900 psi, C_D 1.15, C_F 1.3, C_r 1.15 gives
   *     1547 psi.
   */
  public static AdjustedValues of(DesignValues reference, Adjustments adjustments) {
    Maker make = new Maker(reference, adjustments);
    return new AdjustedValues(
        make.bending(),
        make.tension(),
        make.shear(),
        make.bearing(),
        make.compression(),
        make.stiffness("E", reference.elasticityPsi()),
        make.stiffness("E_min", reference.elasticityMinimumPsi()));
  }

  /**
   * Fb*: the bending value without flat use (and without C_L), which beam stability starts from.
   */
  public AdjustedStress bendingStar() {
    return bending.without(FLAT_USE);
  }

  private record Maker(DesignValues reference, Adjustments by) {
    AdjustedStress bending() {
      double sizedPsi = reference.bendingPsi() * by.size().bendingFactor();
      return new AdjustedStress(
          "Fb",
          reference.bendingPsi(),
          List.of(
              duration(),
              wet(by.wetService().bendingFactor(sizedPsi)),
              heat(by.temperature().bendingFactor()),
              size(by.size().bendingFactor()),
              new Factor(FLAT_USE, by.flatUseFactor()),
              cuts(by.incising().bendingFactor()),
              new Factor("C_r", by.repetitiveFactor())));
    }

    AdjustedStress tension() {
      return new AdjustedStress(
          "Ft",
          reference.tensionPsi(),
          List.of(
              duration(),
              wet(by.wetService().factors().tensionFactor()),
              heat(by.temperature().tensionFactor()),
              size(by.size().tensionFactor()),
              cuts(by.incising().tensionFactor())));
    }

    AdjustedStress shear() {
      return new AdjustedStress(
          "Fv",
          reference.shearPsi(),
          List.of(
              duration(),
              wet(by.wetService().factors().shearFactor()),
              heat(by.temperature().shearFactor()),
              cuts(by.incising().shearFactor())));
    }

    AdjustedStress bearing() {
      return new AdjustedStress(
          "Fc_perp",
          reference.bearingPsi(),
          List.of(
              wet(by.wetService().factors().bearingFactor()),
              heat(by.temperature().bearingFactor()),
              cuts(by.incising().bearingFactor())));
    }

    AdjustedStress compression() {
      double sizedPsi = reference.compressionPsi() * by.size().compressionFactor();
      return new AdjustedStress(
          "Fc",
          reference.compressionPsi(),
          List.of(
              duration(),
              wet(by.wetService().compressionFactor(sizedPsi)),
              heat(by.temperature().compressionFactor()),
              size(by.size().compressionFactor()),
              cuts(by.incising().compressionFactor())));
    }

    AdjustedStress stiffness(String symbol, double referencePsi) {
      return new AdjustedStress(
          symbol,
          referencePsi,
          List.of(
              wet(by.wetService().factors().elasticityFactor()),
              heat(by.temperature().elasticityFactor()),
              cuts(by.incising().elasticityFactor())));
    }

    private Factor duration() {
      return new Factor("C_D", by.loadDurationFactor());
    }

    private static Factor wet(double value) {
      return new Factor("C_M", value);
    }

    private static Factor heat(double value) {
      return new Factor("C_t", value);
    }

    private static Factor size(double value) {
      return new Factor("C_F", value);
    }

    private static Factor cuts(double value) {
      return new Factor("C_i", value);
    }
  }
}
