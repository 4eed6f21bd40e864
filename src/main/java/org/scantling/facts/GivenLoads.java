package org.scantling.facts;

import org.scantling.quantity.Unit;

/** Loads that a site file gives as its own code prints them, in kilopascals. */
final class GivenLoads {
  /** The codes print hundredths of a kilopascal. */
  private static final double STEPS_OF_A_KILOPASCAL = 100;

  private GivenLoads() {}

  /** The greatest printed load that is no more. */
  static double down(double psf) {
    double kilopascals = Unit.PSF_FROM_KPA.toMetric(psf);
    double printed = Math.floor(kilopascals * STEPS_OF_A_KILOPASCAL) / STEPS_OF_A_KILOPASCAL;
    return printed / Unit.PSF_FROM_KPA.toMetric(1);
  }
}
