package org.scantling.judge;

/**
 * What lies on one unit of the top: an inch of a crossbeam, or one crossbeam on a header.
 *
 * @param deadLb crossbeams' own weight
 * @param vineLb climbers
 * @param liveLb live load
 * @param snowLb snow
 * @param pressLb wind pressing, strength level
 * @param liftLb wind lifting, strength level
 */
record Top(
    double deadLb, double vineLb, double liveLb, double snowLb, double pressLb, double liftLb) {
  Top times(double factor) {
    return new Top(
        deadLb * factor,
        vineLb * factor,
        liveLb * factor,
        snowLb * factor,
        pressLb * factor,
        liftLb * factor);
  }
}
