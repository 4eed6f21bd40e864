package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.scantling.design.Geometry;
import org.scantling.design.HeaderPiece;
import org.scantling.design.KneeBraces;
import org.scantling.design.Point;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;

/**
 * The crossbeams: notched over both headers, with shaped tails.
 *
 * <p>Where they are doubled at the posts, two lie side by side there and count as one place.
 *
 * <p>Paired boards stand flush with the tops of their posts, so between two notches the wood would
 * land on the post: a crossbeam over a post is notched right across both boards and the post.
 */
final class Crossbeams {
  private static final Shape.Ends ENDS = Shape.Ends.named("near-tip", "far-tip");
  private static final double HAIR = 1e-6;

  private final Built built;
  private final Geometry geometry;
  private final Structure.Member member;
  private final Tape tape;
  private final TopLine top;

  Crossbeams(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.member = built.member("crossbeam");
    this.tape = built.tape();
    this.top = built.top();
  }

  List<Placed> all() {
    List<Placed> crossbeams = new ArrayList<>();
    Shape between = shape(false);
    Shape overPost = shape(true);
    for (Lying lying : lying()) {
      for (double alongIn : pliesIn(lying)) {
        crossbeams.add(new Placed(isOverPost(alongIn) ? overPost : between, place(alongIn)));
      }
    }
    return crossbeams;
  }

  /**
   * What lies at one place: one crossbeam, or two side by side.
   *
   * @param alongIn middle of it all, from the first post
   * @param plies how many
   * @param breadthIn of it all
   */
  record Lying(double alongIn, int plies, double breadthIn) {}

  /** What lies at each place, from the first on. */
  List<Lying> lying() {
    List<Lying> lying = new ArrayList<>();
    List<Double> nominal = geometry.crossbeamsAtIn();
    List<Double> places = alongIn();
    for (int i = 0; i < places.size(); i++) {
      int plies = pliesAt(nominal.get(i));
      lying.add(new Lying(places.get(i), plies, plies * member.breadthIn()));
    }
    return lying;
  }

  private int pliesAt(double nominalIn) {
    return postUnder(nominalIn).isPresent() ? geometry.crossbeams().pliesAtPosts() : 1;
  }

  /** Middles of the timbers at one place. */
  private List<Double> pliesIn(Lying lying) {
    List<Double> middles = new ArrayList<>();
    for (int ply = 0; ply < lying.plies(); ply++) {
      double offIn = (ply - (lying.plies() - 1) / 2.0) * member.breadthIn();
      middles.add(lying.alongIn() + offIn / top.stretchRatio());
    }
    return middles;
  }

  /** Those that are notched right across a post. */
  List<Lying> overPosts() {
    boolean cut = geometry.crossbeams().notchIn() > 0;
    return lying().stream()
        .filter(each -> cut && pliesIn(each).stream().anyMatch(this::isOverPost))
        .toList();
  }

  /** True where some of it would lie over a post that stands between paired boards. */
  private boolean isOverPost(double alongIn) {
    double offIn = Math.abs(alongIn - top.alongIn(top.nearestPost(alongIn)));
    double reachIn = (geometry.posts().breadthIn() + member.breadthIn()) / 2;
    return built.paired() && offIn < reachIn - HAIR;
  }

  /**
   * Middles of the crossbeams in plan where they sit, from the first post. Where knee braces lap
   * post and crossbeam face to face, a crossbeam over a post stands flush with a side of the post;
   * where paired boards step down at a post, flush with the side of the upper ones. The crossbeam
   * next to it is moved over where the brace would run into it.
   */
  List<Double> alongIn() {
    List<Double> places = new ArrayList<>();
    for (double atIn : geometry.crossbeamsAtIn()) {
      OptionalInt post = postUnder(atIn);
      places.add(post.isPresent() ? overPostIn(post.getAsInt()) : besideBracesIn(atIn));
    }
    return places;
  }

  /** The post that a crossbeam was meant to stand over. */
  private OptionalInt postUnder(double atIn) {
    int post = top.nearestPost(atIn);
    boolean over = Math.abs(atIn - top.alongIn(post)) < HAIR;
    return over ? OptionalInt.of(post) : OptionalInt.empty();
  }

  /** How far the crossbeam over a post stands off its middle, towards the last post. */
  double shiftIn(int post) {
    boolean shifted = built.has("brace") || (built.paired() && top.stepsAt(post));
    // One that leans with the headers is flush with the edge that leans out farthest.
    double outIn = member.depthIn() / 2 * top.headerFallRatio() / top.stretchRatio();
    double atPostIn = geometry.crossbeams().breadthAtPostsIn();
    double offIn = (geometry.posts().breadthIn() - atPostIn) / 2 - outIn;
    return shifted ? KneeBraces.side(top) * offIn : 0;
  }

  private double overPostIn(int post) {
    double shiftIn = shiftIn(post);
    // On a slope it leans with the header; its middle, not its seat, is to stand flush.
    return top.alongIn(post) + shiftIn - (built.has("brace") ? leanIn() : 0);
  }

  /** A place beside the brace that is in its way, where there is room for it. */
  private double besideBracesIn(double atIn) {
    double movedIn = movedIn(atIn);
    return roomAt(movedIn, atIn) ? movedIn : atIn;
  }

  /** True where a brace runs into a crossbeam that has no room to give way. */
  boolean crowded() {
    return geometry.crossbeamsAtIn().stream()
        .filter(atIn -> postUnder(atIn).isEmpty())
        .anyMatch(atIn -> !roomAt(movedIn(atIn), atIn));
  }

  /** Where a crossbeam would lie clear of the braces of the posts, each on the side of its own. */
  private double movedIn(double atIn) {
    double movedIn = atIn;
    if (built.has("brace")) {
      int side = KneeBraces.side(top);
      double besideIn = geometry.posts().breadthIn() / 2 - member.breadthIn() / 2;
      double clearIn =
          geometry.posts().breadthIn() / 2
              + built.member("brace").breadthIn()
              + member.breadthIn() / 2
              + leansOutIn();
      for (int post = 0; post < top.posts(); post++) {
        double offIn = side * (atIn + leanIn() - top.alongIn(post));
        boolean inTheWay = offIn > besideIn + HAIR && offIn < clearIn - HAIR;
        movedIn = inTheWay ? top.alongIn(post) + side * clearIn - leanIn() : movedIn;
      }
    }
    return movedIn;
  }

  /** True where it stays on the headers and off every other crossbeam. */
  private boolean roomAt(double movedIn, double fromIn) {
    double halfIn = member.breadthIn() / 2;
    double tailIn = geometry.headerTailIn();
    boolean onHeaders =
        movedIn - halfIn >= -tailIn - HAIR
            && movedIn + halfIn <= geometry.lengthIn() + tailIn + HAIR;
    return movedIn == fromIn
        || (onHeaders
            && geometry.crossbeamsAtIn().stream()
                .filter(other -> other != fromIn)
                .allMatch(other -> Math.abs(other - movedIn) >= (1 + pliesAt(other)) * halfIn));
  }

  /** How far the middle of a crossbeam that leans with the headers lies from its seat. */
  private double leanIn() {
    return middleOverIn() * top.headerFallRatio() / top.stretchRatio();
  }

  /** How far its edge leans out past its middle. */
  private double leansOutIn() {
    return member.depthIn() / 2 * Math.abs(top.headerFallRatio()) / top.stretchRatio();
  }

  /** Where the crossbeam over a post lies. */
  Place overPost(int post) {
    return place(overPostIn(post));
  }

  /** The piece of header that carries a crossbeam; where steps meet, the higher one. */
  static HeaderPiece under(List<HeaderPiece> runs, double alongIn) {
    HeaderPiece found = runs.get(runs.size() - 1);
    for (int i = runs.size() - 1; i >= 0; i--) {
      HeaderPiece run = runs.get(i);
      if (alongIn <= run.at(run.lastIn(), 0, 0).alongIn() + HAIR) {
        found = run;
      }
    }
    return found;
  }

  private Place place(double alongIn) {
    HeaderPiece run = under(built.headerPieces().pieces(false), alongIn);
    double onLineIn = (alongIn - run.seat().alongIn()) * Math.hypot(1, run.fallRatio());
    Point middle = run.at(onLineIn, middleOverIn(), 0);
    double tailIn = geometry.crossbeamTailIn();
    double farIn = geometry.plan().rowSpacingIn() + tailIn;
    return new Place(
        new Point(middle.alongIn(), -tailIn, middle.upIn()),
        new Point(middle.alongIn(), farIn, middle.upIn()));
  }

  /** Top of the headers over the line of the post tops. */
  double seatOverIn() {
    return built.paired() ? 0 : geometry.headers().depthIn() - geometry.headers().notchIn();
  }

  private double middleOverIn() {
    return seatOverIn() - geometry.crossbeams().notchIn() + member.depthIn() / 2;
  }

  private Shape shape(boolean overPost) {
    EndCut tail = new TailTemplate(built).cut();
    return new Shape(
        "crossbeam",
        member.size(),
        member.breadthIn(),
        member.depthIn(),
        tape.nearest(geometry.crossbeamLengthIn()),
        0,
        ENDS,
        tail,
        tail,
        notches(overPost),
        List.of());
  }

  private List<Recess> notches(boolean overPost) {
    List<Recess> notches = new ArrayList<>();
    if (geometry.crossbeams().notchIn() > 0) {
      Recess.Seat seat =
          overPost
              ? new Recess.Seat(Recess.Seat.BOARDS_AND_POST, geometry.seatBreadthIn())
              : new Recess.Seat("header", geometry.headers().breadthIn());
      for (double seatIn : overPost ? rowsIn() : seatsIn()) {
        notches.add(notch(seatIn, seat));
      }
    }
    return notches;
  }

  private Recess notch(double middleIn, Recess.Seat seat) {
    double widthIn = tape.nearest(seat.widthIn() + built.shop("notch.fit"));
    return new Recess(
        "underside",
        tape.nearest(middleIn - widthIn / 2),
        widthIn,
        tape.nearest(geometry.crossbeams().notchIn()),
        member.breadthIn(),
        seat);
  }

  /** Middles of the rows, from the near tip. */
  private List<Double> rowsIn() {
    double nearIn = geometry.crossbeamTailIn();
    return List.of(nearIn, nearIn + geometry.plan().rowSpacingIn());
  }

  /** Middles of what it sits on, from the near tip. */
  private List<Double> seatsIn() {
    List<Double> seats = new ArrayList<>();
    double boardIn = geometry.headers().breadthIn();
    double offIn = built.paired() ? (geometry.posts().breadthIn() + boardIn) / 2 : 0;
    for (double rowIn : rowsIn()) {
      seats.add(rowIn - offIn);
      if (offIn > 0) {
        seats.add(rowIn + offIn);
      }
    }
    return seats;
  }
}
