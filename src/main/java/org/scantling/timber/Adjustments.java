package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * Everything that adjusts the reference values of a sawn piece, before stability and bearing.
 *
 * <p>Start from {@link #none()} and add what applies. The caller knows when a factor belongs:
 * incising to dimension lumber only, repetitive use to three or more pieces that share their load.
 *
 * <p>Source: NDS, 2018, Table 4.3.1.
 *
 * @param loadDurationFactor C_D of the shortest load in the combination
 * @param wetService C_M with its steps
 * @param temperature C_t
 * @param size C_F
 * @param flatUseFactor C_fu, for load on the wide face
 * @param incising C_i
 * @param repetitiveFactor C_r
 */
public record Adjustments(
    double loadDurationFactor,
    WetService wetService,
    PropertyFactors temperature,
    SizeFactors size,
    double flatUseFactor,
    PropertyFactors incising,
    double repetitiveFactor) {
  public Adjustments {
    Require.positive("C_D", loadDurationFactor, "");
    Require.positive("C_fu", flatUseFactor, "");
    Require.positive("C_r", repetitiveFactor, "");
  }

  /** Ten years' load, dry, mild, no size effect, upright, not incised, on its own: all 1. */
  public static Adjustments none() {
    return new Adjustments(
        1,
        WetService.dry(),
        PropertyFactors.none(),
        SizeFactors.none(),
        1,
        PropertyFactors.none(),
        1);
  }

  /** The same for a load of another duration. */
  public Adjustments lasting(double otherDurationFactor) {
    return new Adjustments(
        otherDurationFactor,
        wetService,
        temperature,
        size,
        flatUseFactor,
        incising,
        repetitiveFactor);
  }

  /** The same in wet service. */
  public Adjustments wet(WetService wet) {
    return new Adjustments(
        loadDurationFactor, wet, temperature, size, flatUseFactor, incising, repetitiveFactor);
  }

  /** The same at another temperature. */
  public Adjustments heated(PropertyFactors heat) {
    return new Adjustments(
        loadDurationFactor, wetService, heat, size, flatUseFactor, incising, repetitiveFactor);
  }

  /** The same for a section with those size factors. */
  public Adjustments sized(SizeFactors otherSize) {
    return new Adjustments(
        loadDurationFactor,
        wetService,
        temperature,
        otherSize,
        flatUseFactor,
        incising,
        repetitiveFactor);
  }

  /** The same laid flat, loaded on the wide face. */
  public Adjustments laidFlat(double otherFlatUseFactor) {
    return new Adjustments(
        loadDurationFactor,
        wetService,
        temperature,
        size,
        otherFlatUseFactor,
        incising,
        repetitiveFactor);
  }

  /** The same with the surface cut open for the preservative. */
  public Adjustments incised(PropertyFactors cuts) {
    return new Adjustments(
        loadDurationFactor, wetService, temperature, size, flatUseFactor, cuts, repetitiveFactor);
  }

  /** The same in a row of pieces that share their load. */
  public Adjustments repeated(double otherRepetitiveFactor) {
    return new Adjustments(
        loadDurationFactor,
        wetService,
        temperature,
        size,
        flatUseFactor,
        incising,
        otherRepetitiveFactor);
  }
}
