package org.scantling.confirm;

/**
 * What one crossbeam puts on one header, by kind of load, in pounds.
 *
 * @param deadLb its own weight, and that of one block where blocks stand between them
 * @param vinesLb climbers on its strip
 * @param liveLb live load on its strip
 * @param snowLb snow on its strip
 * @param windDownLb wind pressing down, strength level
 * @param windUpLb wind lifting, strength level, positive
 * @param jointUpLb the same at a corner of the top, where it is hardest on one joint
 * @param postUpLb the same at a corner of the top, as it comes to one post
 * @param personLb one person at the worst place of that crossbeam
 */
public record HeaderLoad(
    double deadLb,
    double vinesLb,
    double liveLb,
    double snowLb,
    double windDownLb,
    double windUpLb,
    double jointUpLb,
    double postUpLb,
    double personLb) {

  /** A share of it. */
  HeaderLoad times(double shareRatio) {
    return new HeaderLoad(
        shareRatio * deadLb,
        shareRatio * vinesLb,
        shareRatio * liveLb,
        shareRatio * snowLb,
        shareRatio * windDownLb,
        shareRatio * windUpLb,
        shareRatio * jointUpLb,
        shareRatio * postUpLb,
        shareRatio * personLb);
  }
}
