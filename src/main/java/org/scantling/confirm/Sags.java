package org.scantling.confirm;

import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/** How far each span of a beam and its worse tip move under one load, for EI = 1, without sign. */
final class Sags {
  private final double[] spans;
  private final double tip;

  private Sags(BeamResult result, ContinuousBeam beam) {
    this.spans = new double[beam.spanCount()];
    for (int span = 0; span < spans.length; span++) {
      spans[span] = Math.abs(result.largestSpanDeflection(span).amount());
    }
    this.tip =
        Math.max(
            Math.abs(result.leftTipDeflectionLbIn3()), Math.abs(result.rightTipDeflectionLbIn3()));
  }

  static Sags of(BeamResult result, ContinuousBeam beam) {
    return new Sags(result, beam);
  }

  /** Largest movement inside a span, lb·in³. */
  double span(int span) {
    return spans[span];
  }

  /** Movement of the worse tip, lb·in³. */
  double tip() {
    return tip;
  }
}
