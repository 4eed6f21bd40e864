package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * How far from something a fastener must be, in diameters: end distance, edge distance, spacing, or
 * how deep it must go in.
 *
 * @param what a name for the distance, such as "end-pulled"
 * @param minimumDiameters less than that is not allowed, 0 or more
 * @param fullDiameters from there the whole value counts, not under the minimum
 */
public record PlacementRule(String what, double minimumDiameters, double fullDiameters) {
  public PlacementRule {
    Require.zeroOrMore("least " + what, minimumDiameters, "diameters");
    if (!(fullDiameters > 0 && fullDiameters >= minimumDiameters)) {
      throw new IllegalArgumentException(
          what
              + " for the full value, "
              + fullDiameters
              + " diameters, must be above 0 and not under the least, "
              + minimumDiameters);
    }
  }

  /**
   * A fastener's distance held against this rule.
   *
   * @param distanceIn what it is, above 0
   * @param diameterIn nominal diameter of the fastener, above 0
   */
  public Placement at(double distanceIn, double diameterIn) {
    return new Placement(this, distanceIn, diameterIn);
  }
}
