package org.scantling.loads;

import org.scantling.quantity.Require;

/**
 * One side or frame as the wind sees it.
 *
 * @param solidAreaIn2 timber area square to the wind, sq in, above zero, not over the gross area
 * @param grossAreaIn2 area inside the outline, openings included, sq in, above zero
 */
public record WindPanel(double solidAreaIn2, double grossAreaIn2) {
  public WindPanel {
    Require.positive("solid area", solidAreaIn2, "in²");
    Require.positive("gross area", grossAreaIn2, "in²");
    Require.atMost("solid area", solidAreaIn2, "in²", "gross area", grossAreaIn2);
  }

  /** Solid over gross area, the solidity ε of the wind figures. */
  public double solidityRatio() {
    return solidAreaIn2 / grossAreaIn2;
  }
}
