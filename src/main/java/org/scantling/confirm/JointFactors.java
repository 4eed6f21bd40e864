package org.scantling.confirm;

import org.scantling.timber.PlacementRule;

/**
 * The factors of fasteners outdoors, filled from the tables.
 *
 * @param wet C_M
 * @param endGrain C_eg
 * @param toe C_tn
 * @param bolts distances of bolts
 * @param nailDepth depth of nails and wood screws in the lower timber
 * @param lagDepth depth of lag screws in the lower timber
 */
public record JointFactors(
    Wet wet,
    Pair endGrain,
    Pair toe,
    BoltPlaces bolts,
    PlacementRule nailDepth,
    PlacementRule lagDepth) {

  /**
   * C_M of fasteners in wood that is wet in service.
   *
   * @param sideFactor any fastener, pushed sideways
   * @param screwPullFactor screws, pulled
   * @param nailPullFactor smooth nails, pulled, in wood that dries after they are driven
   */
  public record Wet(double sideFactor, double screwPullFactor, double nailPullFactor) {}

  /** One factor for pushing sideways and one for pulling out. */
  public record Pair(double sideFactor, double pullFactor) {}

  /**
   * How far bolts must be from ends, edges and each other.
   *
   * @param endPulled end of a timber that is pulled along its grain
   * @param endPressed end of a timber that is pressed along its grain
   * @param endAcross end of a timber that is loaded across its grain
   * @param inRowAlong between the bolts of a row, load along the grain
   * @param inRowAcross between the bolts of a row, load across the grain
   * @param edgeAlong edge of a timber that is loaded along its grain
   * @param edgeLoaded edge towards which a timber is loaded across its grain
   * @param rowsAcross between rows, load across the grain, where bolts are long for their thickness
   * @param rowsApartMostIn outer bolts of a sawn timber, across its grain
   */
  public record BoltPlaces(
      PlacementRule endPulled,
      PlacementRule endPressed,
      PlacementRule endAcross,
      PlacementRule inRowAlong,
      PlacementRule inRowAcross,
      PlacementRule edgeAlong,
      PlacementRule edgeLoaded,
      PlacementRule rowsAcross,
      double rowsApartMostIn) {}
}
