package org.scantling.timber;

import org.scantling.quantity.Require;

/**
 * The size factors C_F of one section and grade.
 *
 * <p>Where the size is already in the tabulated value, as for southern pine, these are 1.
 *
 * @param bendingFactor on Fb
 * @param tensionFactor on Ft
 * @param compressionFactor on Fc
 */
public record SizeFactors(double bendingFactor, double tensionFactor, double compressionFactor) {
  private static final double LARGEST_TESTED_DEPTH_IN = 12;
  private static final double DEPTH_EXPONENT = 1.0 / 9;

  public SizeFactors {
    Require.positive("C_F on Fb", bendingFactor, "");
    Require.positive("C_F on Ft", tensionFactor, "");
    Require.positive("C_F on Fc", compressionFactor, "");
  }

  /** No adjustment for size. */
  public static SizeFactors none() {
    return new SizeFactors(1, 1, 1);
  }

  /**
   * The size factors of a timber, 5x5 and larger: only a depth over 12 in lowers Fb.
   *
   * @param depthIn dressed depth, above 0
   * @return C_F on Fb of (12/d)^(1/9), never above 1
   *     <p>Source: NDS, 2018, 4.3.6.2. Worked: 13.5 in deep gives 0.987.
   */
  public static SizeFactors ofTimber(double depthIn) {
    Require.positive("depth", depthIn, "in");
    double bending = Math.min(1, Math.pow(LARGEST_TESTED_DEPTH_IN / depthIn, DEPTH_EXPONENT));
    return new SizeFactors(bending, 1, 1);
  }
}
