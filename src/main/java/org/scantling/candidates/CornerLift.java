package org.scantling.candidates;

import java.util.Comparator;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.loads.RoofEdgeZone;
import org.scantling.tables.Tables;
import org.scantling.tables.WindRow;

/**
 * The corner of the top, where the wind lifts hardest: what of it hangs on the joint of one
 * crossbeam and on one post, and with what coefficient. Standard parts are lifted harder the
 * smaller they are; that the covered share of an open top multiplies it is an upper-bound choice.
 */
public final class CornerLift {
  private static final String ROWS = "wind.edge.";

  private final Tables tables;
  private final Geometry geometry;
  private final boolean obstructed;

  /**
   * @param obstructed true where leaves on the sides stop the wind below the top
   */
  CornerLift(Tables tables, Geometry geometry, boolean obstructed) {
    this.tables = tables;
    this.geometry = geometry;
    this.obstructed = obstructed;
  }

  /** Width of the zone along the edge in which the wind lifts harder. */
  private double zoneIn() {
    double roofIn = Math.min(geometry.crossbeamLengthIn(), geometry.headerLengthIn());
    return RoofEdgeZone.widthIn(
        roofIn,
        geometry.overallHeightIn(),
        new RoofEdgeZone.WidthRule(row("width-share"), row("height-share"), row("width-least")));
  }

  /** A crossbeam counts at least a third of its span wide. */
  private double jointAreaIn2() {
    double spanIn = geometry.plan().rowSpacingIn();
    return spanIn * Math.max(geometry.crossbeamSpacingIn(), spanIn * row("span-share"));
  }

  /** What hangs on one post: half of every crossbeam of a bay, of the shortest to be safe. */
  private double postAreaIn2() {
    return geometry.plan().along().shortestIn() * halfIn();
  }

  /** Half of a crossbeam, from its tip to the middle of the walk. */
  private double halfIn() {
    return geometry.crossbeamLengthIn() / 2;
  }

  /** The half of a crossbeam that hangs on one joint. */
  public RoofEdgeZone.Part joint() {
    return most(jointAreaIn2());
  }

  /** What hangs on one post. */
  public RoofEdgeZone.Part post() {
    return most(postAreaIn2());
  }

  /** Wind along the walk finds its way clear; leafy sides stop wind across it. */
  private RoofEdgeZone.Part most(double areaIn2) {
    RoofEdgeZone.Part clear = zone("clear").part(areaIn2, halfIn());
    if (!obstructed) {
      return clear;
    }
    RoofEdgeZone.Part stopped = zone("obstructed").part(areaIn2, halfIn());
    return stopped.meanFactor() > clear.meanFactor() ? stopped : clear;
  }

  private RoofEdgeZone zone(String flow) {
    String corners = ROWS + flow + ".corner.";
    List<RoofEdgeZone.Band> bands =
        tables.wind().rows().stream()
            .filter(row -> row.id().startsWith(corners))
            .sorted(Comparator.comparingDouble(WindRow::toRatio))
            .map(row -> band(row, flow))
            .toList();
    return new RoofEdgeZone(zoneIn(), bands);
  }

  private RoofEdgeZone.Band band(WindRow corner, String flow) {
    String size = corner.id().substring((ROWS + flow + ".corner.").length());
    return new RoofEdgeZone.Band(corner.toRatio(), corner.amount(), row(flow + ".edge." + size));
  }

  private double row(String id) {
    return tables.wind(ROWS + id).amount();
  }
}
