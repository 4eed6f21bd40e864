package org.scantling.loads;

/**
 * One side or frame as the wind sees it.
 *
 * @param solidAreaSqIn timber area square to the wind, sq in, above zero, not over the gross area
 * @param grossAreaSqIn area inside the outline, openings included, sq in, above zero
 */
public record WindPanel(double solidAreaSqIn, double grossAreaSqIn) {
  public WindPanel {
    Argument.positive("solid area (sq in)", solidAreaSqIn);
    Argument.positive("gross area (sq in)", grossAreaSqIn);
    Argument.atMost("solid area (sq in)", solidAreaSqIn, "gross area (sq in)", grossAreaSqIn);
  }

  /** Solid over gross area, the solidity ε of the wind figures. */
  public double solidityRatio() {
    return solidAreaSqIn / grossAreaSqIn;
  }
}
