package org.scantling.confirm;

import org.scantling.design.Geometry;

/**
 * What one crossbeam puts on one header, by kind of load, in pounds.
 *
 * @param deadLb its own weight, and that of one block where blocks stand between them
 * @param vinesLb climbers on its strip
 * @param liveLb live load on its strip
 * @param snowLb snow on its strip
 * @param windDownLb wind pressing down, strength level
 * @param windUpLb wind lifting, strength level, positive
 * @param personLb one person at the worst place of that crossbeam
 */
public record HeaderLoad(
    double deadLb,
    double vinesLb,
    double liveLb,
    double snowLb,
    double windDownLb,
    double windUpLb,
    double personLb) {

  /**
   * What a crossbeam of that timber puts on one of its two headers.
   *
   * @param material the crossbeam
   * @param loads on the open top
   */
  static HeaderLoad of(Geometry geometry, Material material, TopLoads loads) {
    double halfLengthIn = geometry.crossbeamLengthIn() / 2;
    double strip = geometry.crossbeamSpacingIn() * halfLengthIn;
    return new HeaderLoad(
        material.weightLbPerIn() * halfLengthIn + blockLb(geometry, material),
        TopLoads.lbPerIn(loads.vinePsf(), strip),
        TopLoads.lbPerIn(loads.livePsf(), strip),
        TopLoads.lbPerIn(loads.snowPsf(), strip),
        TopLoads.lbPerIn(loads.windDownPsf(), strip),
        TopLoads.lbPerIn(loads.windUpPsf(), strip),
        // At the tip of a tail a person levers more than their weight onto the near header.
        loads.personLb() * (1 + geometry.crossbeamTailIn() / geometry.plan().rowSpacingIn()));
  }

  private static double blockLb(Geometry geometry, Material material) {
    Geometry.Crossbeams crossbeams = geometry.crossbeams();
    return crossbeams.blocked()
        ? material.weightLbPerIn()
            * (crossbeams.blockDepthIn() / crossbeams.depthIn())
            * geometry.crossbeamGapIn()
        : 0;
  }

  /** A share of it. */
  HeaderLoad times(double shareRatio) {
    return new HeaderLoad(
        shareRatio * deadLb,
        shareRatio * vinesLb,
        shareRatio * liveLb,
        shareRatio * snowLb,
        shareRatio * windDownLb,
        shareRatio * windUpLb,
        shareRatio * personLb);
  }
}
