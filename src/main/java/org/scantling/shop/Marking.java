package org.scantling.shop;

/**
 * Rounds marks on a piece, each from the end it is nearer to, so that a piece turned end for end is
 * marked the same.
 */
final class Marking {
  private final Tape tape;
  private final double exactIn;

  /**
   * @param exactIn length of the piece before it is rounded
   */
  Marking(Tape tape, double exactIn) {
    this.tape = tape;
    this.exactIn = exactIn;
  }

  double lengthIn() {
    return tape.nearest(exactIn);
  }

  /** A single mark. */
  double at(double fromFirstIn) {
    return fromFirstIn <= exactIn / 2
        ? tape.nearest(fromFirstIn)
        : tape.nearest(lengthIn() - tape.nearest(exactIn - fromFirstIn));
  }

  /** The near edge of something that wide, so that its width is kept to the mark. */
  double edge(double fromIn, double toIn) {
    double widthIn = tape.nearest(toIn - fromIn);
    return (fromIn + toIn) / 2 <= exactIn / 2
        ? tape.nearest(fromIn)
        : tape.nearest(lengthIn() - tape.nearest(exactIn - toIn) - widthIn);
  }
}
