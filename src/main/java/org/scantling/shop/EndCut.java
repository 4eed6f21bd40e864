package org.scantling.shop;

import java.util.List;

/** How an end of a piece is cut. */
public sealed interface EndCut {
  /** Straight across. */
  record Square() implements EndCut {}

  /**
   * Straight, but sloping over the depth or the breadth of the piece.
   *
   * @param offSquareDegrees off square
   * @param setBackIn how far the short edge lies behind the long one
   * @param longEdge which edge is the long one
   */
  record Sloping(double offSquareDegrees, double setBackIn, String longEdge) implements EndCut {}

  /**
   * A shaped tail.
   *
   * @param kind slant or curve
   * @param outline from the top of the nose round to the underside: how far back from the tip, and
   *     how far down from the top edge
   */
  record Shaped(String kind, List<Corner> outline) implements EndCut {
    public Shaped {
      outline = List.copyOf(outline);
    }
  }

  /**
   * @param backIn from the tip, along the piece
   * @param downIn from the top edge
   */
  record Corner(double backIn, double downIn) {}

  static EndCut square() {
    return new Square();
  }
}
