package org.scantling.design;

import java.util.ArrayList;
import java.util.List;

/**
 * Where knee braces lie. All rise at 45 degrees from the plumb of their post, from the middle line
 * of the post to that of the timber overhead, and are cut flush with the far side of the post.
 *
 * <p>Those across the walk end flush with the top of the crossbeam, those along it at the underside
 * of the crossbeams, which cross over them.
 *
 * @param legIn least length along post and timber
 * @param depthIn of the brace
 * @param feetApartIn least distance between the feet of two braces along the walk at one post
 */
public record KneeBraces(TopLine top, double legIn, double depthIn, double feetApartIn) {
  private static final double SINE = Math.sqrt(0.5);

  /**
   * A brace along the walk, the same in both rows.
   *
   * @param towards 1 for one that rises towards the last post, -1 towards the first
   * @param outside true on the outer face of its row
   * @param legIn as long along the post as along the timber, in plan
   * @param footUpIn height of the middle of its foot
   */
  public record Along(int post, int towards, boolean outside, double legIn, double footUpIn) {
    public double headUpIn() {
      return footUpIn + legIn;
    }
  }

  /**
   * The side of every post on which its crossbeam stands flush and its brace across the walk lies:
   * 1 towards the last post. Where the top steps down, the crossbeam lies on the upper header.
   */
  public static int side(TopLine top) {
    return top.stepped() ? -1 : 1;
  }

  /**
   * All that rise to the side of the crossbeams lie outside, all others on the walk side: so two at
   * one post lie on its two faces, and so do two in one bay. At a post with two, the foot of the
   * inner one lies lower, so that each has a bolt of its own.
   */
  public List<Along> along() {
    List<Along> braces = new ArrayList<>();
    int side = side(top);
    for (int post = 0; post < top.posts(); post++) {
      double mostUpIn = Double.POSITIVE_INFINITY;
      if (bay(post, side)) {
        Along outer = along(post, side, true, mostUpIn);
        braces.add(outer);
        mostUpIn = outer.footUpIn() - feetApartIn;
      }
      if (bay(post, -side)) {
        braces.add(along(post, -side, false, mostUpIn));
      }
    }
    return braces;
  }

  /**
   * The longest leg, whatever the leg of these, at which no brace along the walk reaches into the
   * one across it at the next post. In every bay that one lies on the face of its post towards the
   * bay and crosses the walk side of the row, on which the inner brace of the other post rises up
   * to it. It may be below 0 where posts stand close.
   *
   * @param braceIn thickness of the brace across
   */
  public double longestLegIn(double braceIn) {
    Geometry geometry = top.geometry();
    double takenIn = geometry.posts().breadthIn() / 2 + braceIn + aboveAlongIn() + depthIn * SINE;
    int side = side(top);
    double longestIn = Double.POSITIVE_INFINITY;
    for (int post = 0; post < top.posts(); post++) {
      if (bay(post, -side)) {
        double reachIn = bayIn(post, -side) - takenIn;
        longestIn = Math.min(longestIn, bay(post, side) ? legForIn(post, reachIn) : reachIn);
      }
    }
    return longestIn;
  }

  /** The leg of the outer brace of a post whose inner one, its foot below, has one of that much. */
  private double legForIn(int post, double innerIn) {
    int side = side(top);
    double fall = side * top.headerFallRatio();
    double footUpIn = headerMiddleUpIn(post, -side) - innerIn * (1 - fall);
    double outerIn = (headerMiddleUpIn(post, side) - feetApartIn - footUpIn) / (1 + fall);
    return Math.min(innerIn, outerIn);
  }

  /** True where a bay lies on that side of the post. */
  private boolean bay(int post, int towards) {
    return post + towards >= 0 && post + towards < top.posts();
  }

  /** The bay on that side of the post. */
  private double bayIn(int post, int towards) {
    return top.geometry().plan().along().lengthIn(towards > 0 ? post : post - 1);
  }

  private Along along(int post, int towards, boolean outside, double mostUpIn) {
    double headerUpIn = headerMiddleUpIn(post, towards);
    double fall = towards * top.headerFallRatio();
    double footUpIn = Math.min(mostUpIn, headerUpIn - legIn * (1 + fall));
    return new Along(post, towards, outside, (headerUpIn - footUpIn) / (1 + fall), footUpIn);
  }

  /** Middle of the header over the middle of a post, on the side of the bay that a brace is in. */
  private double headerMiddleUpIn(int post, int towards) {
    Geometry.Headers headers = top.geometry().headers();
    int bay = towards > 0 ? post : post - 1;
    double lineUpIn = top.stepped() ? top.seatIn(bay) : top.topIn(post);
    double overIn =
        headers.depthIn() / 2 - (headers.paired() ? headers.depthIn() : headers.notchIn());
    return lineUpIn + overIn * top.stretchRatio();
  }

  /** What is cut off above the middle of the head of a brace along the walk. */
  public double aboveAlongIn() {
    double overIn = top.geometry().headers().depthIn() / 2 - top.geometry().crossbeams().notchIn();
    // The end is cut level under a header that may fall, a little beyond the head.
    double fall = Math.abs(top.headerFallRatio());
    return (overIn * top.stretchRatio() - depthIn * SINE * fall) / (1 + fall);
  }

  public double alongLengthIn(Along brace) {
    return lengthIn(brace.legIn(), aboveAlongIn());
  }

  public double acrossLengthIn() {
    return lengthIn(legIn, top.geometry().crossbeams().depthIn() / 2);
  }

  /** From the end of the foot to the middle of the foot, along the brace, to its long edge. */
  public double belowIn() {
    return top.geometry().posts().breadthIn() / 2 / SINE + depthIn / 2;
  }

  private double lengthIn(double legIn, double aboveIn) {
    return belowIn() + legIn / SINE + aboveIn / SINE + depthIn / 2;
  }
}
