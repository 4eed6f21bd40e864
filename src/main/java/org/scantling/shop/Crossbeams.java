package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;

/**
 * The crossbeams: notched over both headers, with shaped tails.
 *
 * <p>Paired boards stand flush with the tops of their posts, so between two notches the wood would
 * land on the post: a crossbeam over a post is notched right across both boards and the post.
 */
final class Crossbeams {
  private static final Shape.Ends ENDS = new Shape.Ends("near tip", "far tip");
  private static final double HAIR = 1e-6;

  private final Built built;
  private final Geometry geometry;
  private final Structure.Member member;
  private final Tape tape;

  Crossbeams(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.member = built.member("crossbeam");
    this.tape = built.tape();
  }

  List<Placed> all() {
    List<Placed> crossbeams = new ArrayList<>();
    Shape between = shape(false);
    Shape overPost = shape(true);
    for (double alongIn : alongIn()) {
      crossbeams.add(new Placed(isOverPost(alongIn) ? overPost : between, place(alongIn)));
    }
    return crossbeams;
  }

  /** Middles of those that are notched right across a post, from the first post. */
  List<Double> overPostsIn() {
    boolean cut = geometry.crossbeams().notchIn() > 0;
    return alongIn().stream().filter(atIn -> cut && isOverPost(atIn)).toList();
  }

  /** True where some of it would lie over a post that stands between paired boards. */
  private boolean isOverPost(double alongIn) {
    double bayIn = geometry.plan().bayIn();
    long post = Math.max(0, Math.min(geometry.plan().bays(), Math.round(alongIn / bayIn)));
    double reachIn = (geometry.posts().breadthIn() + member.breadthIn()) / 2;
    return built.paired() && Math.abs(alongIn - post * bayIn) < reachIn - HAIR;
  }

  /**
   * Middles of the crossbeams in plan, from the first post. Where knee braces lap post and
   * crossbeam face to face, a crossbeam over a post stands flush with the side of the post, the one
   * towards the middle of the walk.
   */
  List<Double> alongIn() {
    List<Double> places = new ArrayList<>();
    double bayIn = geometry.plan().bayIn();
    for (double atIn : geometry.crossbeamsAtIn()) {
      long post = Math.round(atIn / bayIn);
      boolean overPost =
          Math.abs(atIn - post * bayIn) < HAIR && post >= 0 && post <= geometry.plan().bays();
      places.add(built.has("brace") && overPost ? atIn + flushIn((int) post) : atIn);
    }
    return places;
  }

  private double flushIn(int post) {
    double offIn = (geometry.posts().breadthIn() - member.breadthIn()) / 2;
    return post == geometry.plan().bays() ? -offIn : offIn;
  }

  /** The piece of header that carries a crossbeam; where steps meet, the higher one. */
  private static HeaderRun under(List<HeaderRun> runs, double alongIn) {
    HeaderRun found = runs.get(runs.size() - 1);
    for (int i = runs.size() - 1; i >= 0; i--) {
      HeaderRun run = runs.get(i);
      if (alongIn <= run.at(run.lastIn(), 0, 0).alongIn() + HAIR) {
        found = run;
      }
    }
    return found;
  }

  private Place place(double alongIn) {
    HeaderRun run = under(new HeaderRuns(built).pieces(false), alongIn);
    double onLineIn = (alongIn - run.seat().alongIn()) * Math.hypot(1, run.fallRatio());
    Point middle = run.at(onLineIn, middleOverIn(), 0);
    double tailIn = geometry.crossbeamTailIn();
    double farIn = geometry.plan().rowSpacingIn() + tailIn;
    return new Place(
        new Point(middle.alongIn(), -tailIn, middle.upIn()),
        new Point(middle.alongIn(), farIn, middle.upIn()));
  }

  private double middleOverIn() {
    double headerTopIn =
        built.paired() ? 0 : geometry.headers().depthIn() - geometry.headers().notchIn();
    return headerTopIn - geometry.crossbeams().notchIn() + member.depthIn() / 2;
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
