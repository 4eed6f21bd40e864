package org.scantling.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.design.Point;
import org.scantling.design.TopLine;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;

/**
 * The posts: as long as from foot to top, and housed for the rails. Bolts are bored through them
 * where they stand, with the boards for a template.
 */
final class Posts {
  private static final Sayings SAYINGS = Sayings.of("pieces");
  private static final Shape.Ends ENDS = Shape.Ends.named("foot", "top");

  private final Built built;
  private final Geometry geometry;
  private final TopLine top;
  private final Tape tape;
  private final double spareIn;

  Posts(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.top = built.top();
    this.tape = built.tape();
    this.spareIn = new PostSpare(built).spareIn(longestIn());
  }

  List<Placed> all() {
    List<Placed> posts = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      for (int post = 0; post < top.posts(); post++) {
        posts.add(new Placed(shape(row, post), place(row, post)));
      }
    }
    return posts;
  }

  /** To the long edge of a sloping top. */
  private double lengthIn(int row, int post) {
    return top.topIn(post)
        - top.footIn(row, post)
        + geometry.posts().breadthIn() / 2 * Math.abs(top.headerFallRatio());
  }

  private double longestIn() {
    double longestIn = 0;
    for (int post = 0; post < top.posts(); post++) {
      longestIn = Math.max(longestIn, lengthIn(top.lowRow(), post));
    }
    return longestIn;
  }

  private Place place(int row, int post) {
    double acrossIn = row * geometry.plan().rowSpacingIn();
    Point foot = new Point(top.alongIn(post), acrossIn, top.footIn(row, post));
    return new Place(foot, foot.plus(0, lengthIn(row, post)));
  }

  private Shape shape(int row, int post) {
    return new Shape(
        "post",
        built.member("post").size(),
        geometry.posts().breadthIn(),
        geometry.posts().breadthIn(),
        tape.nearest(lengthIn(row, post)),
        spareIn,
        ENDS,
        EndCut.square(),
        topCut(),
        housings(row, post),
        List.of());
  }

  private EndCut topCut() {
    if (!top.follows()) {
      return EndCut.square();
    }
    double setBackIn = geometry.posts().breadthIn() * Math.abs(top.headerFallRatio());
    return new EndCut.Sloping(
        top.degrees(), tape.nearest(setBackIn), SAYINGS.say("long.first-post-side"));
  }

  private List<Recess> housings(int row, int post) {
    List<Recess> housings = new ArrayList<>();
    if (!built.has("rail")) {
      return housings;
    }
    housing(row, post, 1).ifPresent(housings::add);
    housing(row, post, -1).ifPresent(housings::add);
    housings.sort(Comparator.comparingDouble(Recess::fromIn).thenComparing(Recess::face));
    return housings;
  }

  /** None where no rail ends. */
  Optional<Recess> housing(int row, int post, int side) {
    boolean last = post == (side > 0 ? top.posts() - 1 : 0);
    boolean only = post == (side > 0 ? 0 : top.posts() - 1);
    return last ? Optional.empty() : Optional.of(housing(row, post, side, only));
  }

  /**
   * @param side 1 for the side towards the last post, -1 for the other
   * @param only true where the post has no housing on its other side
   */
  private Recess housing(int row, int post, int side, boolean only) {
    RailLine rail = new RailLine(built, row, side > 0 ? post : post - 1);
    double faceIn = top.alongIn(post) + side * geometry.posts().breadthIn() / 2;
    double railIn = built.member("rail").depthIn();
    double widthIn =
        tape.nearest(railIn * Math.hypot(1, rail.fallRatio()) + built.shop("notch.fit"));
    double middleIn = rail.middleIn(faceIn) - top.footIn(row, post);
    return new Recess(
        face(row, side, only),
        tape.nearest(middleIn - widthIn / 2),
        widthIn,
        tape.nearest(built.number(Question.RAIL_NOTCH)),
        acrossIn(),
        new Recess.Seat("rail", railIn));
  }

  /**
   * A rail as broad as the post lies in a housing right across; a thinner one enters from outside.
   */
  private double acrossIn() {
    double postIn = geometry.posts().breadthIn();
    double railIn = built.member("rail").breadthIn();
    return tape.nearest(railIn >= postIn ? postIn : (postIn + railIn) / 2);
  }

  /** True where a post between two bays is that of the other row, turned half round. */
  private boolean turns(int row) {
    return row == 1 && built.slopeRatio() == 0 && top.acrossIn() == 0;
  }

  private String face(int row, int side, boolean only) {
    String face = SAYINGS.say(side(row, side, only));
    // Seen with the top up and that side in front.
    boolean left = (row == 0) == (side > 0);
    return openToOneSide()
        ? SAYINGS.say(left ? "face-open.left" : "face-open.right", "face", face)
        : face;
  }

  private String side(int row, int side, boolean only) {
    if (top.follows() || top.stepped()) {
      return side > 0 ? "face.last-post" : "face.first-post";
    }
    return !only && (side > 0) == turns(row) ? "face.opposite" : "face.rail";
  }

  /** True where rails enter their housings from the outer side of the posts. */
  boolean openToOneSide() {
    return built.has("rail") && acrossIn() < tape.nearest(geometry.posts().breadthIn());
  }
}
