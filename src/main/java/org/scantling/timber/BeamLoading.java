package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * How a beam is loaded between the points that hold it upright, and the effective length that goes
 * with it.
 *
 * <p>Source: NDS, 2018, Table 3.3.3 (coefficients other than the uniform span's from memory).
 */
public enum BeamLoading {
  /** A span under a load spread evenly. */
  UNIFORM(2.06, 1.63, 3),
  /** A span under one load at its middle, not held there. */
  MIDSPAN_POINT(1.80, 1.37, 3),
  /** A tail under a load spread evenly. */
  CANTILEVER_UNIFORM(1.33, 0.90, 3),
  /** A tail under a load at its tip. */
  CANTILEVER_TIP_POINT(1.87, 1.44, 3),
  /** A span turned by equal moments at its ends, or held at each of many even loads. */
  END_MOMENTS(1.84, 1.84, 0),
  /** Any other loading of a span or a tail: the table's footnote, on the safe side. */
  OTHER(2.06, 1.63, 3);

  private static final double STOCKY_RATIO = 7;
  private static final double SLENDER_RATIO = 14.3;
  private static final double OTHER_SLENDER_LENGTHS = 1.84;

  private final double stockyLengths;
  private final double lengths;
  private final double depths;

  BeamLoading(double stockyLengths, double lengths, double depths) {
    this.stockyLengths = stockyLengths;
    this.lengths = lengths;
    this.depths = depths;
  }

  /**
   * The effective length for rolling over sideways.
   *
   * @param unbracedLengthIn distance between points that stop the compression edge, 0 or more
   * @param depthIn depth of the beam, above 0
   * @return the effective length in inches; 0 for a beam held all along
   *     <p>Source: NDS, 2018, Table 3.3.3. Worked: uniform load, 240 in unbraced, 30 in deep gives
   *     481 in.
   */
  public double effectiveLengthIn(double unbracedLengthIn, double depthIn) {
    return effective(unbracedLengthIn, depthIn).lengthIn();
  }

  /** The same with how it was worked. */
  public EffectiveLength effective(double unbracedLengthIn, double depthIn) {
    Require.zeroOrMore("unbraced length", unbracedLengthIn, "in");
    double ratio = unbracedLengthIn / Require.positive("depth", depthIn, "in");
    if (ratio < STOCKY_RATIO) {
      return EffectiveLength.of(unbracedLengthIn, stockyLengths, depthIn, 0);
    }
    if (this == OTHER && ratio > SLENDER_RATIO) {
      return EffectiveLength.of(unbracedLengthIn, OTHER_SLENDER_LENGTHS, depthIn, 0);
    }
    return EffectiveLength.of(unbracedLengthIn, lengths, depthIn, depths);
  }
}
