package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.timber.GeometryFactor;
import org.scantling.timber.Placement;
import org.scantling.timber.PlacementRule;

/**
 * Where the bolts sit where a knee brace laps a timber: on the centre line of the brace, about the
 * middle of the lap. The brace is cut flush with the far edge of the other timber, or short of it.
 *
 * <p>Distances between those for load along and across the grain are taken in a straight line by
 * the angle: common practice, the standard gives none for bolts at an angle (from memory).
 *
 * @param places least and full distances
 * @param count bolts
 * @param diameterIn of a bolt
 * @param braceIn depth of the brace
 * @param otherIn depth of the timber that it laps
 * @param shortIn how far below the far edge of that timber the brace is cut
 */
record JointBraceLayout(
    JointFactors.BoltPlaces places,
    int count,
    double diameterIn,
    double braceIn,
    double otherIn,
    double shortIn) {
  private static final double SLOPE_SHARE = 45.0 / 90;
  private static final double SINE = Math.sqrt(0.5);
  private static final double LEAST_IN = 0.01;

  double spacingIn() {
    return places.inRowAlong().fullDiameters() * diameterIn;
  }

  /** What the distances leave while the brace is pulled. */
  GeometryFactor pulled() {
    return factor(places.endPulled());
  }

  /** The same while it is pressed. */
  GeometryFactor pressed() {
    return factor(places.endPressed());
  }

  private GeometryFactor factor(PlacementRule end) {
    double reachIn = (count - 1) * spacingIn() / 2;
    double halfIn = otherIn / 2;
    double toEndIn = (halfIn - shortIn) / SINE - reachIn;
    List<Placement> all = new ArrayList<>();
    all.add(end.at(Math.max(LEAST_IN, toEndIn), diameterIn));
    all.add(places.edgeAlong().at(braceIn / 2, diameterIn));
    all.add(
        slanting(places.edgeAlong(), places.edgeLoaded())
            .at(Math.max(LEAST_IN, halfIn - reachIn * SINE), diameterIn));
    if (count > 1) {
      all.add(places.inRowAlong().at(spacingIn(), diameterIn));
    }
    return new GeometryFactor(all);
  }

  private static PlacementRule slanting(PlacementRule along, PlacementRule across) {
    return new PlacementRule(
        "slant-edge",
        between(along.minimumDiameters(), across.minimumDiameters()),
        between(along.fullDiameters(), across.fullDiameters()));
  }

  private static double between(double along, double across) {
    return along + SLOPE_SHARE * (across - along);
  }
}
