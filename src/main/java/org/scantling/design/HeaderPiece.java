package org.scantling.design;

/**
 * One piece of a header along its line. Distances run along the header from the middle of its first
 * post, heights square to it from the line of the post tops.
 *
 * @param fromPost its first post, counted from 0
 * @param toPost its last post
 * @param firstIn where it begins
 * @param lastIn where it ends
 * @param cutFirst true where another piece meets it over its first post
 * @param cutLast true where another piece meets it over its last post
 * @param seat top of its first post where the header meets it, in the near row
 * @param fallRatio fall of the header over its length in plan
 * @param bays in plan, of the whole walk
 */
public record HeaderPiece(
    int fromPost,
    int toPost,
    double firstIn,
    double lastIn,
    boolean cutFirst,
    boolean cutLast,
    Point seat,
    double fallRatio,
    Bays bays) {

  public double lengthIn() {
    return lastIn - firstIn;
  }

  private double stretchRatio() {
    return Math.hypot(1, fallRatio);
  }

  /** Where the middle of a post meets the line. */
  public double postIn(int post) {
    return (bays.alongIn(post) - bays.alongIn(fromPost)) * stretchRatio();
  }

  /** The point of the site at that distance along the header and that height over its line. */
  public Point at(double alongIn, double overIn, double acrossIn) {
    double cosine = 1 / stretchRatio();
    double sine = fallRatio * cosine;
    return new Point(
        seat.alongIn() + alongIn * cosine + overIn * sine,
        acrossIn,
        seat.upIn() - alongIn * sine + overIn * cosine);
  }

  /**
   * Where something square through the header at a distance off the middle of a post and below the
   * line must be marked along the header, so that it stays that far off on the post.
   */
  public double markedIn(int post, double offPostIn, double belowIn) {
    double cosine = 1 / stretchRatio();
    double sine = fallRatio * cosine;
    return postIn(post) + (offPostIn + belowIn * sine) / cosine;
  }

  /** The same on the post: how far below the middle of its top. */
  public double droppedIn(double offPostIn, double belowIn) {
    double cosine = 1 / stretchRatio();
    double sine = fallRatio * cosine;
    return (offPostIn + belowIn * sine) / cosine * sine + belowIn * cosine;
  }
}
