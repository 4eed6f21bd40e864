package org.scantling.confirm;

import org.scantling.mechanics.BeamResult;

/**
 * What one combination asks of a beam, the most of all ways in which its loads may lie.
 *
 * @param saggingInLb moment that pulls the underside, 0 or more
 * @param hoggingInLb moment that pulls the top, 0 or more
 * @param shearLb largest shear, without sign
 * @param seatLb heaviest reaction, 0 or more
 */
record BeamDemand(double saggingInLb, double hoggingInLb, double shearLb, double seatLb) {

  static BeamDemand of(BeamResult result) {
    double seatLb = 0;
    for (double reactionLb : result.reactionsLb()) {
      seatLb = Math.max(seatLb, reactionLb);
    }
    return new BeamDemand(
        Math.max(0, result.mostSagging().amount()),
        Math.max(0, -result.mostHogging().amount()),
        Math.abs(result.largestShear().amount()),
        seatLb);
  }

  BeamDemand most(BeamDemand other) {
    return new BeamDemand(
        Math.max(saggingInLb, other.saggingInLb),
        Math.max(hoggingInLb, other.hoggingInLb),
        Math.max(shearLb, other.shearLb),
        Math.max(seatLb, other.seatLb));
  }
}
