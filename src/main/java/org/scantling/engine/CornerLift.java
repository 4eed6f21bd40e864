package org.scantling.engine;

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
final class CornerLift {
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
  double zoneIn() {
    double roofIn = Math.min(geometry.crossbeamLengthIn(), geometry.headerLengthIn());
    return RoofEdgeZone.widthIn(
        roofIn,
        geometry.overallHeightIn(),
        new RoofEdgeZone.WidthRule(row("width-share"), row("height-share"), row("width-least")));
  }

  /** A crossbeam counts at least a third of its span wide. */
  double jointAreaIn2() {
    double spanIn = geometry.plan().rowSpacingIn();
    return spanIn * Math.max(geometry.crossbeamSpacingIn(), spanIn * row("span-share"));
  }

  /** What hangs on one post: half of every crossbeam of a bay. */
  double postAreaIn2() {
    return geometry.plan().bayIn() * halfIn();
  }

  /** Upward, over the half of a crossbeam that hangs on one joint. */
  double jointFactor() {
    return mostFactor(jointAreaIn2());
  }

  /** Upward, over what hangs on one post. */
  double postFactor() {
    return mostFactor(postAreaIn2());
  }

  /** Half of a crossbeam, from its tip to the middle of the walk. */
  double halfIn() {
    return geometry.crossbeamLengthIn() / 2;
  }

  /** Wind along the walk finds its way clear; leafy sides stop wind across it. */
  private double mostFactor(double areaIn2) {
    double clear = zone("clear").meanFactor(areaIn2, halfIn());
    return obstructed ? Math.max(clear, zone("obstructed").meanFactor(areaIn2, halfIn())) : clear;
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
