package org.scantling.shop;

import org.scantling.sayings.Sayings;

/** What sits in a notch or a housing, or what it sits on, as it is said aloud. */
final class SeatWords {
  private static final Sayings SAYINGS = Sayings.of("cut-list");

  /** Between half a post and a whole one. */
  private static final double HALF_AND_SOME = 0.75;

  private final Said said;
  private final double postIn;

  /**
   * @param postIn breadth of the posts: where pieces of a header meet, each sits on half of one
   */
  SeatWords(Said said, double postIn) {
    this.said = said;
    this.postIn = postIn;
  }

  String of(Recess.Seat seat) {
    if (seat.role().equals(Recess.Seat.BOARDS_AND_POST)) {
      return SAYINGS.say("seat.boards-and-post", "width", said.length(seat.widthIn()));
    }
    return seat.role().equals("post") && seat.widthIn() < HALF_AND_SOME * postIn
        ? SAYINGS.say("seat.half-post", "width", said.length(postIn))
        : SAYINGS.say("seat.piece", "piece", seat.role(), "width", said.length(seat.widthIn()));
  }

  /** As a remark beside the measures of a recess. */
  String note(Recess.Seat seat) {
    return SAYINGS.say("seat.note", "seat", of(seat));
  }
}
