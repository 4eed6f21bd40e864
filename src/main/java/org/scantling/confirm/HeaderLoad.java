package org.scantling.confirm;

/**
 * What one crossbeam puts on one header, by kind of load, in pounds.
 *
 * @param deadLb its own weight
 * @param vinesLb climbers on its strip
 * @param liveLb live load on its strip
 * @param snowLb snow on its strip
 * @param windDownLb wind pressing down, strength level
 * @param windUpLb wind lifting, strength level, positive
 * @param personLb one person at the worst place of that crossbeam
 */
record HeaderLoad(
    double deadLb,
    double vinesLb,
    double liveLb,
    double snowLb,
    double windDownLb,
    double windUpLb,
    double personLb) {}
