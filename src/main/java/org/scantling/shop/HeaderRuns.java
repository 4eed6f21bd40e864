package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;

/** How the headers of a row are made up of pieces: whole, cut over posts, or stepped bay by bay. */
final class HeaderRuns {
  private final Built built;
  private final Geometry geometry;
  private final TopLine top;

  HeaderRuns(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.top = new TopLine(built);
  }

  /**
   * The pieces of one line of timber, from the first post on.
   *
   * @param turned true for the other board of a pair, which is cut over other posts
   */
  List<HeaderRun> pieces(boolean turned) {
    return top.stepped() ? steps() : cut(turned);
  }

  /** True where the boards of a pair, or the pieces of a timber, meet over the post. */
  boolean cutOver(int post) {
    return pieces(false).stream().anyMatch(run -> meets(run, post))
        || built.paired() && pieces(true).stream().anyMatch(run -> meets(run, post));
  }

  private static boolean meets(HeaderRun run, int post) {
    return run.cutLast() && run.toPost() == post;
  }

  private List<HeaderRun> cut(boolean turned) {
    List<Integer> bays = new ArrayList<>(built.headerBays());
    if (turned) {
      java.util.Collections.reverse(bays);
    }
    List<HeaderRun> runs = new ArrayList<>();
    int post = 0;
    for (int piece = 0; piece < bays.size(); piece++) {
      int last = post + bays.get(piece);
      runs.add(run(post, last, piece > 0, piece + 1 < bays.size()));
      post = last;
    }
    return runs;
  }

  private HeaderRun run(int from, int to, boolean cutFirst, boolean cutLast) {
    double tailIn = geometry.headerTailIn();
    double spanIn = (to - from) * geometry.plan().bayIn() * top.stretchRatio();
    return new HeaderRun(
        from,
        to,
        cutFirst ? 0 : -tailIn,
        spanIn + (cutLast ? 0 : tailIn),
        cutFirst,
        cutLast,
        new Point(top.alongIn(from), 0, top.topIn(from)),
        top.headerFallRatio(),
        geometry.plan().bayIn());
  }

  /** Level pieces; each runs over its lower post and meets its upper one lower down. */
  private List<HeaderRun> steps() {
    List<HeaderRun> runs = new ArrayList<>();
    int bays = geometry.plan().bays();
    double halfIn = geometry.posts().breadthIn() / 2;
    for (int bay = 0; bay < bays; bay++) {
      double beginsIn = built.paired() ? -halfIn : halfIn;
      double endsIn = bay == bays - 1 ? geometry.headerTailIn() : halfIn;
      runs.add(
          new HeaderRun(
              bay,
              bay + 1,
              bay == 0 ? -geometry.headerTailIn() : beginsIn,
              geometry.plan().bayIn() + endsIn,
              false,
              false,
              new Point(top.alongIn(bay), 0, top.seatIn(bay)),
              0,
              geometry.plan().bayIn()));
    }
    return runs;
  }
}
