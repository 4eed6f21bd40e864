package org.scantling.timber;

import java.util.List;
import org.scantling.quantity.Calculated;
import org.scantling.quantity.FormulaLine;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Require;

/**
 * The length that counts for a beam that rolls over sideways, as {@link BeamLoading} makes it.
 *
 * @param unbracedIn distance between points that stop the compression edge
 * @param lengthsFactor how often that distance counts
 * @param depthIn depth of the beam
 * @param depthsFactor how often the depth counts, 0 where it does not
 * @param lengthIn le, 0 for a beam held all along
 */
public record EffectiveLength(
    double unbracedIn, double lengthsFactor, double depthIn, double depthsFactor, double lengthIn)
    implements Calculated {

  static EffectiveLength of(
      double unbracedIn, double lengthsFactor, double depthIn, double depthsFactor) {
    double lengthIn = lengthsFactor * unbracedIn + depthsFactor * depthIn;
    return new EffectiveLength(unbracedIn, lengthsFactor, depthIn, depthsFactor, lengthIn);
  }

  /** A length that is taken as it is. */
  static EffectiveLength stated(double lengthIn, double depthIn) {
    return of(Require.zeroOrMore("effective length", lengthIn, "in"), 1, depthIn, 0);
  }

  @Override
  public List<FormulaLine> lines() {
    String id = depthsFactor > 0 ? "effective-length" : "effective-length-stocky";
    FormulaLine line =
        FormulaLine.of(id, Measure.inches(lengthIn))
            .with("lengths", Measure.ratio(lengthsFactor))
            .with("unbraced", Measure.inches(unbracedIn));
    return List.of(
        depthsFactor > 0
            ? line.with("depths", Measure.ratio(depthsFactor))
                .with("depth", Measure.inches(depthIn))
            : line);
  }
}
