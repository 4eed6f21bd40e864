package org.scantling.confirm;

import java.util.List;
import org.scantling.mechanics.BeamResult;

/**
 * What one combination asks of a beam, the most of all ways in which its loads may lie.
 *
 * @param saggingInLb moment that pulls the underside, 0 or more
 * @param hoggingInLb moment that pulls the top, 0 or more
 * @param shearLb largest shear, without sign
 * @param seatLb heaviest reaction where the beam runs on over its support, 0 or more
 * @param cutSeatLb the most that the end of a piece presses where the beam is cut, 0 or more
 */
record BeamDemand(
    double saggingInLb, double hoggingInLb, double shearLb, double seatLb, double cutSeatLb) {
  private static final double ROUNDED_UP = 1 + 1e-9;

  /**
   * @param cuts supports over which the beam is cut, ascending
   */
  static BeamDemand of(BeamResult result, List<Integer> cuts) {
    double seatLb = 0;
    int cut = 0;
    for (int support = 0; support < result.onSupports().supportCount(); support++) {
      if (cut < cuts.size() && cuts.get(cut) == support) {
        cut++;
      } else {
        seatLb = Math.max(seatLb, result.reactionLb(support));
      }
    }
    return new BeamDemand(
        Math.max(0, result.mostSagging().amount()),
        Math.max(0, -result.mostHogging().amount()),
        Math.abs(result.largestShear().amount()),
        seatLb,
        CutEnds.mostLb(result.onSupports(), cuts));
  }

  /** No less than what both ask together: their worst places need not be the same. */
  BeamDemand and(BeamDemand other, double factor) {
    return new BeamDemand(
        saggingInLb + factor * other.saggingInLb,
        hoggingInLb + factor * other.hoggingInLb,
        shearLb + factor * other.shearLb,
        seatLb + factor * other.seatLb,
        cutSeatLb + factor * other.cutSeatLb);
  }

  /** True where it asks no more than another in any way, but for what rounding may hide. */
  boolean within(BeamDemand other) {
    return within(saggingInLb, other.saggingInLb)
        && within(hoggingInLb, other.hoggingInLb)
        && within(shearLb, other.shearLb)
        && within(seatLb, other.seatLb)
        && within(cutSeatLb, other.cutSeatLb);
  }

  private static boolean within(double asked, double most) {
    return asked * ROUNDED_UP <= most;
  }

  BeamDemand most(BeamDemand other) {
    return new BeamDemand(
        Math.max(saggingInLb, other.saggingInLb),
        Math.max(hoggingInLb, other.hoggingInLb),
        Math.max(shearLb, other.shearLb),
        Math.max(seatLb, other.seatLb),
        Math.max(cutSeatLb, other.cutSeatLb));
  }
}
