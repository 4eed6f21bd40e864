package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.BoltPattern;
import org.scantling.timber.GeometryFactor;
import org.scantling.timber.Placement;
import org.scantling.timber.PlacementRule;

/**
 * Where the bolts sit where paired boards cross a post: one above the other, in one row or in two.
 *
 * <p>The boards are loaded across their grain, from above by what they carry and from below by
 * lifting wind, so both their edges count as loaded; the post is loaded along its grain.
 *
 * @param diameterIn of the bolts
 * @param rows 1 or 2
 * @param spacingIn from the upper to the lower bolt
 * @param toEdgeIn from a bolt to the nearest edge of the boards, which is also its distance to the
 *     top of the post
 * @param rowsApartIn between two rows, 0 for one
 * @param toPostEdgeIn from a row to the edge of the post
 * @param toCutIn from a row to a plumb cut in the middle of the post, along the boards
 */
record JointBoltLayout(
    double diameterIn,
    int rows,
    double spacingIn,
    double toEdgeIn,
    double rowsApartIn,
    double toPostEdgeIn,
    double toCutIn) {
  private static final int IN_A_ROW = 2;

  /**
   * Bolts as far apart as the boards allow.
   *
   * @param count 2 or 4
   */
  static JointBoltLayout of(
      int count, double diameterIn, JointCrossing crossing, JointFactors.BoltPlaces places) {
    BoltPattern pattern =
        BoltPattern.of(
            count,
            crossing.board().depthIn(),
            crossing.postIn(),
            places.edgeLoaded().fullDiameters() * diameterIn,
            places.rowsApartMostIn());
    return new JointBoltLayout(
        diameterIn,
        pattern.columns(),
        pattern.spacingIn(),
        pattern.toEdgeIn(),
        pattern.apartIn(),
        (crossing.postIn() - pattern.apartIn()) / 2,
        pattern.apartIn() / 2 * crossing.stretchRatio());
  }

  int count() {
    return rows * IN_A_ROW;
  }

  int inARow() {
    return IN_A_ROW;
  }

  /** What the distances leave of the bolts' value while the boards press down. */
  GeometryFactor pressed(JointFactors.BoltPlaces places) {
    return factor(places, places.endPressed().at(toEdgeIn, diameterIn));
  }

  /** The same while wind lifts the boards and the bolts pull at the end of the post. */
  GeometryFactor lifted(JointFactors.BoltPlaces places) {
    return factor(places, places.endPulled().at(toEdgeIn, diameterIn));
  }

  /** The bolts of one piece where two meet over the post: a row on either side of the cut. */
  static JointBoltLayout atCut(
      double diameterIn, JointCrossing crossing, JointFactors.BoltPlaces places) {
    return of(2 * IN_A_ROW, diameterIn, crossing, places);
  }

  /**
   * What the distances leave at the end of a piece, half way from the row to the other row. The
   * rows stand plumb on the post and the cut is plumb, so along boards that slope it is longer.
   */
  GeometryFactor atCut(JointFactors.BoltPlaces places, boolean lifted) {
    PlacementRule end = lifted ? places.endPulled() : places.endPressed();
    List<Placement> all = inRow(places, end.at(toEdgeIn, diameterIn));
    all.add(places.endAcross().at(toCutIn, diameterIn));
    return new GeometryFactor(all);
  }

  private GeometryFactor factor(JointFactors.BoltPlaces places, Placement end) {
    List<Placement> all = inRow(places, end);
    if (rows > 1) {
      all.add(places.rowsAcross().at(rowsApartIn, diameterIn));
    }
    return new GeometryFactor(all);
  }

  private List<Placement> inRow(JointFactors.BoltPlaces places, Placement end) {
    return new ArrayList<>(
        List.of(
            end,
            places.inRowAcross().at(spacingIn, diameterIn),
            places.inRowAlong().at(spacingIn, diameterIn),
            places.edgeLoaded().at(toEdgeIn, diameterIn),
            places.edgeAlong().at(toPostEdgeIn, diameterIn)));
  }
}
