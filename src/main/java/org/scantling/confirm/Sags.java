package org.scantling.confirm;

import java.util.function.DoubleBinaryOperator;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/** How far each span of a beam and its worse tip move under a load, for EI = 1, without sign. */
final class Sags {
  private static final double ROUNDED_UP = 1 + 1e-9;

  private final double[] spans;
  private final double tip;

  private Sags(double[] spans, double tip) {
    this.spans = spans;
    this.tip = tip;
  }

  static Sags of(BeamResult result, ContinuousBeam beam) {
    double[] spans = new double[beam.spanCount()];
    for (int span = 0; span < spans.length; span++) {
      spans[span] = Math.abs(result.largestSpanDeflection(span).amount());
    }
    double left = Math.abs(result.leftTipDeflectionLbIn3());
    return new Sags(spans, Math.max(left, Math.abs(result.rightTipDeflectionLbIn3())));
  }

  static Sags none(ContinuousBeam beam) {
    return new Sags(new double[beam.spanCount()], 0);
  }

  /** Largest movement inside a span, lb·in³. */
  double span(int span) {
    return spans[span];
  }

  /** Movement of the worse tip, lb·in³. */
  double tip() {
    return tip;
  }

  /** No less than the sags of both together: their worst places need not be the same. */
  Sags and(Sags other, double factor) {
    return with(other, (one, two) -> one + factor * two);
  }

  /** Of each span and of the tip the larger. */
  Sags most(Sags other) {
    return with(other, Math::max);
  }

  private Sags with(Sags other, DoubleBinaryOperator both) {
    double[] sum = new double[spans.length];
    for (int span = 0; span < sum.length; span++) {
      sum[span] = both.applyAsDouble(spans[span], other.spans[span]);
    }
    return new Sags(sum, both.applyAsDouble(tip, other.tip));
  }

  /** True where nothing moves further than in another, but for what rounding may hide. */
  boolean within(Sags other) {
    boolean within = tip * ROUNDED_UP <= other.tip;
    for (int span = 0; span < spans.length; span++) {
      within &= spans[span] * ROUNDED_UP <= other.spans[span];
    }
    return within;
  }
}
