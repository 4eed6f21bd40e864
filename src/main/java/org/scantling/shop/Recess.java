package org.scantling.shop;

import org.scantling.sayings.Sayings;

/**
 * A notch or a housing.
 *
 * @param face where it is cut
 * @param fromIn its edge nearer to the first end of the piece, from that end
 * @param widthIn along the piece: what sits in it and the room it needs to go in
 * @param depthIn into the piece
 * @param acrossIn how far it reaches over the face; the breadth of the piece for a notch that goes
 *     right through
 * @param seat what sits in it, or what it sits on
 */
public record Recess(
    String face, double fromIn, double widthIn, double depthIn, double acrossIn, Seat seat) {

  /**
   * @param role the piece
   * @param widthIn its dressed size along the notch, without the room
   */
  public record Seat(String role, double widthIn) {
    /** A crossbeam over a post that stands between two boards. */
    static final String BOARDS_AND_POST = Sayings.of("pieces").say("seat.boards-and-post");
  }

  /** Its other edge. */
  public double toIn() {
    return fromIn + widthIn;
  }

  /** Its middle, from the first end. */
  public double atIn() {
    return fromIn + widthIn / 2;
  }
}
