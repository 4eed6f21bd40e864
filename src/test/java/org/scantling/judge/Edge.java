package org.scantling.judge;

/**
 * Lift on components of a free roof by ASCE 7-16 30.8, beside the mean of 27.3.2: greater within a
 * zone along the edge and greatest in its corners. What is proposed before such zones are in the
 * wind table is judged by the mean alone.
 */
final class Edge {
  private final Design design;
  private final boolean blocked;
  private final double zoneIn;
  private final boolean known;

  Edge(Design design, Climate climate) {
    this.design = design;
    double side = Tables.value("wind", "wind.free-roof.obstructed-from");
    blocked = climate.vine("side_fill_leaf_ratio") >= side;
    double wide = Math.min(design.need("crossbeam").lengthIn(), design.need("header").lengthIn());
    zoneIn = Math.max(36, Math.min(0.1 * wide, 0.4 * design.crossbeamTopIn()));
    known = Tables.find("wind", "wind.edge.clear.corner.small").isPresent();
  }

  private double coefficient(int zone, double areaIn2) {
    double squares = areaIn2 / (zoneIn * zoneIn);
    if (squares > 4 || zone == 1) {
      return blocked ? 1.2 : 1.1;
    }
    if (squares > 1 || zone == 2) {
      return blocked ? 1.8 : 1.7;
    }
    return blocked ? 3.6 : 3.3;
  }

  /**
   * Lift on one row under a crossbeam, over that of the mean coefficient.
   *
   * @param fromEndIn how far the crossbeam stands from the end of the top
   * @param areaIn2 what the joint counts for
   */
  double overMean(double fromEndIn, double areaIn2) {
    if (!known) {
      return 1;
    }
    double long_ = design.need("crossbeam").lengthIn();
    double rows = design.layout("rowSpacingIn");
    double tail = (long_ - rows) / 2;
    boolean end = fromEndIn < zoneIn;
    double lift = 0;
    double mean = 0;
    int parts = 200;
    for (int i = 0; i < parts; i++) {
      double x = long_ * (i + 0.5) / parts;
      double share = 1 - (x - tail) / rows;
      boolean side = x < zoneIn || x > long_ - zoneIn;
      int zone = end && side ? 3 : end || side ? 2 : 1;
      lift += share * coefficient(zone, areaIn2);
      mean += share * (blocked ? 1.2 : 1.1);
    }
    return lift / mean;
  }

  /** The span times its strip, which need not be less than a third of the span (26.2). */
  double crossbeamAreaIn2() {
    double rows = design.layout("rowSpacingIn");
    return rows * Math.max(design.layout("crossbeamSpacingIn"), rows / 3);
  }
}
