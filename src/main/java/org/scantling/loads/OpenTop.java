package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * An open top seen from the sky: crossbeams with gaps, and leaves or stems in the gaps.
 *
 * @param crossbeamBreadthIn breadth of one crossbeam in plan, in, above zero, not over the spacing
 * @param crossbeamSpacingIn centre to centre, in, above zero
 * @param foliageFillRatio share of the gaps that leaves and stems close in the season asked about,
 *     0 to 1
 */
public record OpenTop(
    double crossbeamBreadthIn, double crossbeamSpacingIn, double foliageFillRatio) {
  public OpenTop {
    Require.positive("crossbeam breadth", crossbeamBreadthIn, "in");
    Require.positive("crossbeam spacing", crossbeamSpacingIn, "in");
    Require.atMost(
        "crossbeam breadth", crossbeamBreadthIn, "in", "crossbeam spacing", crossbeamSpacingIn);
    Require.share("foliage fill", foliageFillRatio);
  }

  /**
   * The same of timbers that are only tried and may be broader than their spacing: they close the
   * top.
   */
  public static OpenTop tried(
      double crossbeamBreadthIn, double crossbeamSpacingIn, double foliageFillRatio) {
    return new OpenTop(
        Math.min(crossbeamBreadthIn, crossbeamSpacingIn), crossbeamSpacingIn, foliageFillRatio);
  }

  /** Clear gap between neighbouring crossbeams, in. */
  public double gapIn() {
    return crossbeamSpacingIn - crossbeamBreadthIn;
  }

  /** Share of the sky that the timber alone covers. */
  public double solidRatio() {
    return crossbeamBreadthIn / crossbeamSpacingIn;
  }

  /**
   * Share of the sky that timber and foliage cover together.
   *
   * @return solid + (1 − solid) × fill, 0 to 1
   *     <p>Worked number: 1.5 in crossbeams at 12 in with gaps half full of leaves cover 0.5625.
   */
  public double coveredRatio() {
    return solidRatio() + (1 - solidRatio()) * foliageFillRatio;
  }
}
