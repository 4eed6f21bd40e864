package org.scantling.shop;

import java.util.List;
import org.scantling.design.HeaderPiece;

/**
 * Where the pieces of a line of boards end and are bored, rounded to the tape from the ends of the
 * whole line and not of each piece: so the holes of two boards that are bolted to each other lie on
 * one place though the boards are cut over different posts.
 *
 * <p>Each place is rounded from the end of the line that it is nearer to, and the line is twice its
 * half as rounded, so that a piece has its like, turned end for end, in the other half of the line.
 */
final class LineMarks {
  private final Tape tape;
  private final double startIn;
  private final double exactIn;

  /**
   * @param runs the pieces of one line, from the first post on
   */
  LineMarks(Tape tape, List<HeaderPiece> runs) {
    HeaderPiece last = runs.get(runs.size() - 1);
    this.tape = tape;
    this.startIn = runs.get(0).firstIn();
    this.exactIn = beforeIn(last) + last.lastIn() - startIn;
  }

  double lengthIn(HeaderPiece run) {
    return tape.nearest(roundedIn(run, run.lastIn()) - roundedIn(run, run.firstIn()));
  }

  /**
   * A mark on a piece, from its first end.
   *
   * @param alongIn from the middle of its first post
   */
  double at(HeaderPiece run, double alongIn) {
    return tape.nearest(roundedIn(run, alongIn) - roundedIn(run, run.firstIn()));
  }

  /** Where what is rounded so comes to lie, from the middle of the first post of the piece. */
  double liesIn(HeaderPiece run, double alongIn) {
    double overIn = lineIn() - exactIn;
    return roundedIn(run, alongIn) - overIn / 2 + startIn - beforeIn(run);
  }

  private double lineIn() {
    return 2 * tape.nearest(exactIn / 2);
  }

  /** From the end of the line, on the tape. */
  private double roundedIn(HeaderPiece run, double alongIn) {
    double fromEndIn = beforeIn(run) + alongIn - startIn;
    return fromEndIn <= exactIn / 2
        ? tape.nearest(fromEndIn)
        : lineIn() - tape.nearest(exactIn - fromEndIn);
  }

  /** From the first post of the line to the first of the piece. */
  private static double beforeIn(HeaderPiece run) {
    return -run.postIn(0);
  }
}
