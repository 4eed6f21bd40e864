package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.CutHeaders;
import org.scantling.design.Geometry;
import org.scantling.design.HeaderBearing;
import org.scantling.design.HeaderPiece;
import org.scantling.design.Point;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.JointRow;

/** The headers: notched over their posts and bored for lag screws, or bored for bolts. */
final class Headers {
  private static final Sayings SAYINGS = Sayings.of("pieces");
  private static final Shape.Ends ENDS = Shape.Ends.named("first", "last");

  private final Built built;
  private final Geometry geometry;
  private final Structure.Member member;
  private final TopLine top;
  private final Tape tape;

  Headers(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.member = built.member("header");
    this.top = built.top();
    this.tape = built.tape();
  }

  List<Placed> all() {
    List<Placed> headers = new ArrayList<>();
    CutHeaders runs = built.headerPieces();
    for (int row = 0; row < 2; row++) {
      if (built.paired()) {
        line(headers, runs.pieces(false), row, -1);
        line(headers, runs.pieces(true), row, 1);
      } else {
        line(headers, runs.pieces(false), row, 0);
      }
    }
    return headers;
  }

  /**
   * @param side -1 for the board on the outer side of its row, 1 for the one on the walk side, 0
   *     for a timber on top
   */
  private void line(List<Placed> headers, List<HeaderPiece> runs, int row, int side) {
    double offIn = side * (geometry.posts().breadthIn() + member.breadthIn()) / 2;
    double acrossIn = row * geometry.plan().rowSpacingIn() + (row == 0 ? offIn : -offIn);
    LineMarks marks = new LineMarks(tape, runs);
    for (HeaderPiece run : runs) {
      boolean one = inOneLine(run);
      double firstIn = one ? marks.liesIn(run, run.firstIn()) : run.firstIn();
      double lastIn = one ? marks.liesIn(run, run.lastIn()) : run.lastIn();
      Point first = run.at(firstIn, middleOverIn(), acrossIn);
      Point last = run.at(lastIn, middleOverIn(), acrossIn);
      headers.add(new Placed(shape(run, marks), new Place(first, last)));
    }
  }

  /** True for a board of a pair that is cut elsewhere than its fellow; at a step both are alike. */
  private boolean inOneLine(HeaderPiece run) {
    return built.paired() && !top.stepped() && (run.cutFirst() || run.cutLast());
  }

  /** Middle of the header over the line of the post tops. */
  private double middleOverIn() {
    return geometry.headers().paired()
        ? -member.depthIn() / 2
        : member.depthIn() / 2 - geometry.headers().notchIn();
  }

  private Shape shape(HeaderPiece run, LineMarks marks) {
    return new Shape(
        "header",
        member.size(),
        member.breadthIn(),
        member.depthIn(),
        inOneLine(run) ? marks.lengthIn(run) : tape.nearest(run.lengthIn()),
        0,
        ENDS,
        run.cutFirst() ? cut(SAYINGS.say("long.upper-edge")) : EndCut.square(),
        run.cutLast() ? cut(SAYINGS.say("long.lower-edge")) : EndCut.square(),
        built.paired() ? List.of() : notches(run),
        built.paired() ? bolts(run, marks) : lags(run));
  }

  /** Boards meet plumb over the middle of a post, so that each keeps its bolts clear of the cut. */
  private EndCut cut(String longEdge) {
    double fall = top.headerFallRatio();
    return built.paired() && fall > 0
        ? new EndCut.Sloping(top.degrees(), tape.nearest(member.depthIn() * fall), longEdge)
        : EndCut.square();
  }

  private List<Recess> notches(HeaderPiece run) {
    List<Recess> notches = new ArrayList<>();
    if (geometry.headers().notchIn() > 0) {
      for (int post = run.fromPost(); post <= run.toPost(); post++) {
        HeaderBearing bearing = HeaderBearing.of(run, post, stretchedPostIn());
        if (bearing.lengthIn() > 0) {
          notches.add(notch(run, bearing));
        }
      }
    }
    return notches;
  }

  private double stretchedPostIn() {
    return geometry.posts().breadthIn() * top.stretchRatio();
  }

  /** The notch has room on each side where wood is left; at an open end none is needed. */
  private Recess notch(HeaderPiece run, HeaderBearing bearing) {
    double roomIn = built.shop("notch.fit") / 2;
    double fromIn = bearing.opensFirst() ? run.firstIn() : bearing.fromIn() - roomIn;
    double toIn = bearing.opensLast() ? run.lastIn() : bearing.toIn() + roomIn;
    Marking marking = new Marking(tape, run.lengthIn());
    return new Recess(
        "underside",
        marking.edge(fromIn - run.firstIn(), toIn - run.firstIn()),
        tape.nearest(toIn - fromIn),
        tape.nearest(geometry.headers().notchIn()),
        member.breadthIn(),
        new Recess.Seat("post", bearing.lengthIn()));
  }

  /** Two to each bearing, one on either side of the middle line. */
  private List<Bore> lags(HeaderPiece run) {
    List<Bore> bores = new ArrayList<>();
    JointRow joint = built.joint(Question.HEADER_JOINT);
    if (!joint.way().equals("lagged")) {
      return bores;
    }
    double offIn = built.shop("lag.offset-share") * geometry.posts().breadthIn();
    for (int post = run.fromPost(); post <= run.toPost(); post++) {
      HeaderBearing bearing = HeaderBearing.of(run, post, stretchedPostIn());
      for (int lag = 0; lag < joint.count() && bearing.lengthIn() > 0; lag++) {
        int side = lag % 2 == 0 ? 1 : -1;
        double alongIn = bearing.whole() ? bearing.middleIn() - side * offIn : bearing.middleIn();
        bores.add(lag(joint, run, alongIn, side * offIn));
      }
    }
    return BoreOrder.sorted(bores);
  }

  private Bore lag(JointRow joint, HeaderPiece run, double alongIn, double offIn) {
    return new Bore(
        "top",
        new Marking(tape, run.lengthIn()).at(alongIn - run.firstIn()),
        tape.nearest(offIn),
        built.fastener(joint).orElseThrow().diameterIn(),
        built.fastener(joint).orElseThrow().name());
  }

  /** Over a cut a piece has the bolts of its own half of the post. */
  private static boolean holds(HeaderPiece run, int post, HeaderBolts.Spot spot) {
    boolean beyondFirst = run.cutFirst() && post == run.fromPost() && spot.offPostIn() < 0;
    boolean beyondLast = run.cutLast() && post == run.toPost() && spot.offPostIn() > 0;
    return !beyondFirst && !beyondLast;
  }

  private List<Bore> bolts(HeaderPiece run, LineMarks marks) {
    List<Bore> bores = new ArrayList<>();
    HeaderBolts bolts = new HeaderBolts(built);
    for (int post = run.fromPost(); post <= run.toPost(); post++) {
      for (HeaderBolts.Spot spot : bolts.spots(post)) {
        double atIn = run.markedIn(post, spot.offPostIn(), spot.belowIn());
        if (holds(run, post, spot)) {
          bores.add(
              new Bore(
                  "side",
                  inOneLine(run)
                      ? marks.at(run, atIn)
                      : new Marking(tape, run.lengthIn()).at(atIn - run.firstIn()),
                  tape.nearest(member.depthIn() / 2 - spot.belowIn()),
                  bolts.holeIn(),
                  bolts.name()));
        }
      }
    }
    return BoreOrder.sorted(bores);
  }
}
