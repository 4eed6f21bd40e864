package org.scantling.design;

import java.util.ArrayList;
import java.util.List;

/**
 * The headers of a row as they are cut: whole, cut over posts, or one to a bay where the top goes
 * down in steps. What is checked, told, listed and drawn of headers is read from here.
 *
 * <p>Boards of a pair are cut plumb over the middle of a post, a timber on top square to itself. At
 * a step, paired boards end at the middle of the post, each bolted to its own half of it, the lower
 * bay's further down. A timber on top runs to the far face of the post that it lies on; that of the
 * next bay begins at the same face, on a hanger.
 *
 * @param splice bays under each piece, from the first post on
 */
public record CutHeaders(TopLine top, Splice splice) {
  /**
   * The pieces of one line of timber, from the first post on.
   *
   * @param turned true for the other board of a pair, which is cut over other posts
   */
  public List<HeaderPiece> pieces(boolean turned) {
    return top.stepped() ? steps() : cut(turned);
  }

  /** The pieces of a row and of the other row, board by board. */
  public List<HeaderPiece> all() {
    List<HeaderPiece> row = new ArrayList<>(pieces(false));
    if (geometry().headers().paired()) {
      row.addAll(pieces(true));
    }
    List<HeaderPiece> all = new ArrayList<>(row);
    all.addAll(row);
    return all;
  }

  /** True where the boards of a pair, or the pieces of a timber, meet over the post. */
  public boolean cutOver(int post) {
    return pieces(false).stream().anyMatch(run -> meets(run, post))
        || (geometry().headers().paired()
            && pieces(true).stream().anyMatch(run -> meets(run, post)));
  }

  private Geometry geometry() {
    return top.geometry();
  }

  private static boolean meets(HeaderPiece run, int post) {
    return run.cutLast() && run.toPost() == post;
  }

  private List<HeaderPiece> cut(boolean turned) {
    List<Integer> order = (turned && turns() ? splice.turned() : splice).bays();
    List<HeaderPiece> runs = new ArrayList<>();
    int post = 0;
    for (int piece = 0; piece < order.size(); piece++) {
      int last = post + order.get(piece);
      runs.add(run(post, last, piece > 0, piece + 1 < order.size()));
      post = last;
    }
    return runs;
  }

  /**
   * True where the other board of a pair can lie turned end for end, which brings its joints over
   * other posts; where bays differ from both ends it is cut as the first.
   */
  public boolean turns() {
    return geometry().plan().along().mirrored();
  }

  private HeaderPiece run(int from, int to, boolean cutFirst, boolean cutLast) {
    double tailIn = geometry().headerTailIn();
    double spanIn = (top.alongIn(to) - top.alongIn(from)) * top.stretchRatio();
    return new HeaderPiece(
        from,
        to,
        cutFirst ? 0 : -tailIn,
        spanIn + (cutLast ? plumbIn() : tailIn),
        cutFirst,
        cutLast,
        new Point(top.alongIn(from), 0, top.topIn(from)),
        top.headerFallRatio(),
        geometry().plan().along());
  }

  /** How much longer the lower edge of a board is where it is cut plumb over a post. */
  private double plumbIn() {
    return geometry().headers().paired()
        ? geometry().headers().depthIn() * top.headerFallRatio()
        : 0;
  }

  /** Level pieces, one a bay, each lower than the one before. */
  private List<HeaderPiece> steps() {
    List<HeaderPiece> runs = new ArrayList<>();
    int last = geometry().plan().bays() - 1;
    double tailIn = geometry().headerTailIn();
    double stepIn = geometry().headers().paired() ? 0 : geometry().posts().breadthIn() / 2;
    for (int bay = 0; bay <= last; bay++) {
      double bayIn = geometry().plan().along().lengthIn(bay);
      runs.add(
          new HeaderPiece(
              bay,
              bay + 1,
              bay == 0 ? -tailIn : stepIn,
              bayIn + (bay == last ? tailIn : stepIn),
              bay > 0,
              bay < last,
              new Point(top.alongIn(bay), 0, top.seatIn(bay)),
              0,
              geometry().plan().along()));
    }
    return runs;
  }
}
