package org.scantling.confirm;

import java.util.function.DoubleBinaryOperator;
import org.scantling.mechanics.BeamResult;
import org.scantling.mechanics.ContinuousBeam;

/** How far each span of a beam and each of its tips move under a load, for EI = 1, without sign. */
final class Sags {
  /** The left one and the right one. */
  static final int TIPS = 2;

  private static final double ROUNDED_UP = 1 + 1e-9;

  private final double[] spans;
  private final double[] tips;

  private Sags(double[] spans, double[] tips) {
    this.spans = spans;
    this.tips = tips;
  }

  static Sags of(BeamResult result, ContinuousBeam beam) {
    double[] spans = new double[beam.spanCount()];
    for (int span = 0; span < spans.length; span++) {
      spans[span] = Math.abs(result.largestSpanDeflection(span).amount());
    }
    double left = Math.abs(result.leftTipDeflectionLbIn3());
    double right = Math.abs(result.rightTipDeflectionLbIn3());
    return new Sags(spans, new double[] {left, right});
  }

  static Sags none(ContinuousBeam beam) {
    return new Sags(new double[beam.spanCount()], new double[TIPS]);
  }

  /** Largest movement inside a span, lb·in³. */
  double span(int span) {
    return spans[span];
  }

  /** Movement of a tip, the left one first, lb·in³. */
  double tip(int end) {
    return tips[end];
  }

  /** Movement of the worse tip, lb·in³. */
  double tip() {
    return Math.max(tips[0], tips[1]);
  }

  /** No less than the sags of both together: their worst places need not be the same. */
  Sags and(Sags other, double factor) {
    return with(other, (one, two) -> one + factor * two);
  }

  /** Of each span and of each tip the larger. */
  Sags most(Sags other) {
    return with(other, Math::max);
  }

  private Sags with(Sags other, DoubleBinaryOperator both) {
    return new Sags(both(spans, other.spans, both), both(tips, other.tips, both));
  }

  private static double[] both(double[] one, double[] other, DoubleBinaryOperator both) {
    double[] sum = new double[one.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = both.applyAsDouble(one[i], other[i]);
    }
    return sum;
  }

  /** True where nothing moves further than in another, but for what rounding may hide. */
  boolean within(Sags other) {
    return within(spans, other.spans) && within(tips, other.tips);
  }

  private static boolean within(double[] these, double[] others) {
    boolean within = true;
    for (int i = 0; i < these.length; i++) {
      within &= these[i] * ROUNDED_UP <= others[i];
    }
    return within;
  }
}
