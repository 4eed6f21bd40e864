package org.scantling.facts;

import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.loads.HillWind;
import org.scantling.quantity.Inches;
import org.scantling.tables.Tables;

/** How the hill that the site stands on speeds the wind up. */
final class DerivedHillWind {
  private static final String ROWS = "wind.hill.";

  private final Tables tables;
  private final Site.Hill hill;
  private final String exposure;
  private final Geometry geometry;

  DerivedHillWind(Tables tables, Site.Hill hill, String exposure, Geometry geometry) {
    this.tables = tables;
    this.hill = hill;
    this.exposure = exposure;
    this.geometry = geometry;
  }

  HillWind wind() {
    return HillWind.of(
        new HillWind.Place(
            hill.heightIn(), hill.halfLengthIn(), hill.fromCrestIn(), aboveGroundIn()),
        new HillWind.Shape(
            row(hill.shape() + ".k1." + exposure),
            row(hill.shape() + ".decay"),
            row(hill.shape() + ".reach")),
        new HillWind.Bounds(
            row("least-height." + exposure) * Inches.PER_FOOT,
            row("least-steepness"),
            row("most-steepness")));
  }

  /**
   * The middle of what stands in the wind: lower down a hill speeds the wind up more, which the
   * height factor of the top does not show.
   */
  double aboveGroundIn() {
    return geometry.overallHeightIn() / 2;
  }

  private double row(String id) {
    return tables.wind(ROWS + id).amount();
  }
}
