package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.mechanics.Axes;
import org.scantling.mechanics.FrameLoad;

/**
 * The straight beam on top of a braced plane, cut into pieces at every post and brace.
 *
 * @param marksIn ends of the pieces, from the left tip to the right one
 */
record BracedLine(List<Double> marksIn) {
  private static final double SLACK_IN = 1e-6;

  BracedLine {
    marksIn = List.copyOf(marksIn);
  }

  static String node(int mark) {
    return "beam." + mark;
  }

  static String piece(int piece) {
    return "beam.piece." + piece;
  }

  int pieceCount() {
    return marksIn.size() - 1;
  }

  List<String> pieces() {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < pieceCount(); i++) {
      names.add(piece(i));
    }
    return names;
  }

  /** The pieces that braces work on: all but the two tails. */
  List<String> betweenTails() {
    return pieces().subList(1, pieceCount() - 1);
  }

  /** The mark at that place. */
  int mark(double atIn) {
    for (int i = 0; i < marksIn.size(); i++) {
      if (Math.abs(marksIn.get(i) - atIn) < SLACK_IN) {
        return i;
      }
    }
    throw new IllegalArgumentException("the beam has no mark at " + atIn + " in, only " + marksIn);
  }

  /** A load that presses down at one place. */
  FrameLoad point(double atIn, double downLb) {
    int piece = 0;
    while (piece < pieceCount() - 1 && atIn > marksIn.get(piece + 1)) {
      piece++;
    }
    double offsetIn = atIn - marksIn.get(piece);
    double lengthIn = marksIn.get(piece + 1) - marksIn.get(piece);
    double onPieceIn = Math.max(0, Math.min(offsetIn, lengthIn));
    return new FrameLoad.Point(piece(piece), Axes.GLOBAL, onPieceIn, 0, -downLb);
  }

  /** A load that presses down evenly from tip to tip. */
  List<FrameLoad> everywhere(double downLbPerIn) {
    List<FrameLoad> loads = new ArrayList<>();
    for (String piece : pieces()) {
      loads.add(FrameLoad.Uniform.whole(piece, Axes.GLOBAL, 0, -downLbPerIn));
    }
    return loads;
  }
}
