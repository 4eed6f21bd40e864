package org.scantling.confirm;

/**
 * What lies on the top and what the wind does to it, on plan area, before any combination.
 *
 * @param vinePsf climbers, wet
 * @param livePsf live load spread over the top
 * @param personLb one person at the worst place
 * @param snowPsf snow that the open top keeps
 * @param windDownPsf wind pressing down, strength level
 * @param windUpPsf wind lifting, strength level, positive
 * @param jointUpPsf the same at one crossbeam's joint near a corner of the top, where it is hardest
 * @param postUpPsf the same over what hangs on one post there
 */
public record TopLoads(
    double vinePsf,
    double livePsf,
    double personLb,
    double snowPsf,
    double windDownPsf,
    double windUpPsf,
    double jointUpPsf,
    double postUpPsf) {

  private static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;

  /** Lifted as hard everywhere. */
  public TopLoads(
      double vinePsf,
      double livePsf,
      double personLb,
      double snowPsf,
      double windDownPsf,
      double windUpPsf) {
    this(vinePsf, livePsf, personLb, snowPsf, windDownPsf, windUpPsf, windUpPsf, windUpPsf);
  }

  /** A pressure on a strip of the top, as a line load. */
  public static double lbPerIn(double pressurePsf, double stripIn) {
    return pressurePsf * stripIn / SQUARE_INCHES_PER_SQUARE_FOOT;
  }
}
