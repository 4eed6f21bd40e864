package org.scantling.shop;

/**
 * A notch or a housing.
 *
 * @param face where it is cut
 * @param atIn its middle, from the first end of the piece
 * @param widthIn along the piece: what sits in it and the room it needs to go in
 * @param depthIn into the piece
 * @param acrossIn how far it reaches over the face; the breadth of the piece for a notch that goes
 *     right through
 * @param seats the piece that sits in it, or that it sits on
 * @param seatIn dressed size of that piece, without the room
 */
public record Recess(
    String face,
    double atIn,
    double widthIn,
    double depthIn,
    double acrossIn,
    String seats,
    double seatIn) {

  /** Its edge nearer to the first end, from that end. */
  public double fromIn() {
    return atIn - widthIn / 2;
  }

  /** Its other edge. */
  public double toIn() {
    return atIn + widthIn / 2;
  }
}
