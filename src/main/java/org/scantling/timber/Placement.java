package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.Check;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * One distance of a fastener and what share of its value it leaves.
 *
 * @param rule the least and the full distance
 * @param distanceIn what it is, above 0
 * @param diameterIn nominal diameter of the fastener, above 0
 */
public record Placement(PlacementRule rule, double distanceIn, double diameterIn)
    implements Calculated {
  private static final double SLACK = 1e-9;

  public Placement {
    Require.positive(rule.what(), distanceIn, "in");
    Require.positive("fastener diameter", diameterIn, "in");
  }

  /** The least distance in inches. */
  public double minimumIn() {
    return rule.minimumDiameters() * diameterIn;
  }

  /** The distance that keeps the whole value, in inches. */
  public double fullIn() {
    return rule.fullDiameters() * diameterIn;
  }

  /**
   * The share of the value that counts, 1 from the full distance on.
   *
   * <p>Source: NDS, 2018, 12.5.1 for distances, 12.1.4 to 12.1.6 for penetration. Worked: 1.25 in
   * deep of 10 × 0.162 in gives 0.772. Below the least distance the share is only told for
   * comparison: {@link #check()} fails.
   */
  public double factor() {
    double ratio = distanceIn / fullIn();
    return ratio >= 1 - SLACK ? 1 : ratio;
  }

  /** The least distance against what it is. */
  public Check check() {
    return new Check(minimumIn(), distanceIn);
  }

  /** Its share where it is not all. */
  @Override
  public List<FormulaLine> lines() {
    double share = factor();
    return share < 1
        ? List.of(
            FormulaLine.of("share", Measure.ratio(share))
                .with("distance", Measure.inches(distanceIn))
                .with("full", Measure.ratio(rule.fullDiameters()))
                .with("diameter", Measure.inches(diameterIn)))
        : List.of();
  }
}
