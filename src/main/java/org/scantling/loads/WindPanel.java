package org.scantling.loads;

/**
 * One side or frame as the wind sees it.
 *
 * @param solidAreaIn2 timber area square to the wind, sq in, above zero, not over the gross area
 * @param grossAreaIn2 area inside the outline, openings included, sq in, above zero
 */
public record WindPanel(double solidAreaIn2, double grossAreaIn2) {
  public WindPanel {
    Argument.positive("solid area (sq in)", solidAreaIn2);
    Argument.positive("gross area (sq in)", grossAreaIn2);
    Argument.atMost("solid area (sq in)", solidAreaIn2, "gross area (sq in)", grossAreaIn2);
  }

  /** Solid over gross area, the solidity ε of the wind figures. */
  public double solidityRatio() {
    return solidAreaIn2 / grossAreaIn2;
  }
}
