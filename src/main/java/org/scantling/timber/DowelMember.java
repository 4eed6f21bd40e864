package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * One of the pieces that a fastener holds together.
 *
 * @param bearingLengthIn length of the fastener in the piece, above 0
 * @param bearingPsi Fe of the piece in the direction of the load, above 0
 * @param angleDegrees between load and grain in the piece, from 0 to 90; 0 for steel
 */
public record DowelMember(double bearingLengthIn, double bearingPsi, double angleDegrees) {
  public DowelMember {
    Require.positive("length of the fastener in the piece", bearingLengthIn, "in");
    Require.positive("dowel bearing strength", bearingPsi, "psi");
    Require.within("angle to the grain", angleDegrees, "degrees", 0, 90);
  }

  /** A wooden piece, with its dowel bearing strength at the load's angle to the grain. */
  public static DowelMember ofWood(
      double bearingLengthIn, DowelBearing bearing, double angleDegrees) {
    return new DowelMember(bearingLengthIn, bearing.atPsi(angleDegrees), angleDegrees);
  }
}
