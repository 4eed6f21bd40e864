package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.design.Point;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;
import org.scantling.quantity.Length;
import org.scantling.reasons.Question;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.JointRow;

/**
 * The knee braces: at 45 degrees, lapping post and beam face to face, cut flush with the far edge
 * of both. Legs run between middle lines, as the checks take them.
 */
final class Braces {
  private static final Shape.Ends ENDS = new Shape.Ends("foot", "head");
  private static final double DEGREES = 45;
  private static final double SINE = Math.sqrt(0.5);

  private final Built built;
  private final Geometry geometry;
  private final Structure.Member member;
  private final TopLine top;
  private final double legIn;

  Braces(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.member = built.member("brace");
    this.top = built.top();
    this.legIn = built.number(Question.BRACE_LEG);
  }

  static List<Placed> of(Built built) {
    if (!built.has("brace")) {
      return List.of();
    }
    Braces braces = new Braces(built);
    List<Placed> all = new ArrayList<>(braces.acrossTheWalk());
    all.addAll(braces.alongTheWalk());
    return all;
  }

  /** One at every post, up to the crossbeam that stands flush with the post's side. */
  private List<Placed> acrossTheWalk() {
    List<Placed> braces = new ArrayList<>();
    double beamIn = built.member("crossbeam").depthIn();
    for (int row = 0; row < 2; row++) {
      int toWalk = row == 0 ? 1 : -1;
      for (int post = 0; post < top.posts(); post++) {
        int side = post == top.posts() - 1 ? -1 : 1;
        double offIn = side * (geometry.posts().breadthIn() + member.breadthIn()) / 2;
        double rowIn = row * geometry.plan().rowSpacingIn();
        double beamUpIn = top.topIn(post) + crossbeamOverIn();
        double alongIn = top.alongIn(post) + offIn;
        Point foot = new Point(alongIn, rowIn, beamUpIn - legIn);
        Point head = new Point(alongIn, rowIn + toWalk * legIn, beamUpIn);
        braces.add(placed(foot, head, beamIn));
      }
    }
    return braces;
  }

  /**
   * One on either side of a post where there is a bay. Two that meet at a post lie on opposite
   * sides of it: the one that rises towards the last post outside.
   */
  private List<Placed> alongTheWalk() {
    List<Placed> braces = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      for (int post = 0; post < top.posts(); post++) {
        if (post < top.posts() - 1) {
          braces.add(along(row, post, 1, true));
        }
        if (post > 0) {
          braces.add(along(row, post, -1, post == top.posts() - 1));
        }
      }
    }
    return braces;
  }

  private Placed along(int row, int post, int towards, boolean outside) {
    double beamIn = geometry.headers().depthIn();
    double beamUpIn = top.topIn(post) + headerOverIn();
    int outward = row == 0 ? -1 : 1;
    double faceIn = beamFaceIn() + member.breadthIn() / 2;
    double acrossIn =
        row * geometry.plan().rowSpacingIn() + (outside ? outward : -outward) * faceIn;
    Point foot = new Point(top.alongIn(post), acrossIn, beamUpIn - legIn);
    Point head = new Point(top.alongIn(post) + towards * legIn, acrossIn, beamUpIn);
    return placed(foot, head, beamIn);
  }

  /** Middle of the crossbeams over the top of the post. */
  private double crossbeamOverIn() {
    double headerTopIn =
        built.paired() ? 0 : geometry.headers().depthIn() - geometry.headers().notchIn();
    return headerTopIn - geometry.crossbeams().notchIn() + built.member("crossbeam").depthIn() / 2;
  }

  /** Middle of the headers over the top of the post, negative where they are bolted to it. */
  private double headerOverIn() {
    double beamIn = geometry.headers().depthIn();
    return built.paired() ? -beamIn / 2 : beamIn / 2 - geometry.headers().notchIn();
  }

  /** How far below the top of its post the foot of a brace is bolted. */
  double footBelowTopIn(boolean acrossTheWalk) {
    return legIn - (acrossTheWalk ? crossbeamOverIn() : headerOverIn());
  }

  /** From the middle of the row to the side of what the brace meets overhead. */
  private double beamFaceIn() {
    return Math.max(geometry.seatBreadthIn(), geometry.posts().breadthIn()) / 2;
  }

  /** Gap between an along brace and the side of its post, to be packed out. */
  static double packingIn(Built built) {
    return built.has("brace")
        ? Math.max(0, built.geometry().seatBreadthIn() - built.geometry().posts().breadthIn()) / 2
        : 0;
  }

  private Placed placed(Point foot, Point head, double beamIn) {
    double belowIn = geometry.posts().breadthIn() / 2 / SINE + member.depthIn() / 2;
    double aboveIn = beamIn / 2 / SINE + member.depthIn() / 2;
    double nodesIn = legIn / SINE;
    Place nodes = new Place(foot, head);
    return new Placed(
        shape(belowIn, nodesIn, aboveIn),
        new Place(nodes.at(-belowIn), nodes.at(nodesIn + aboveIn)));
  }

  private Shape shape(double belowIn, double nodesIn, double aboveIn) {
    EndCut end =
        new EndCut.Sloping(
            DEGREES, built.tape().nearest(member.depthIn()), "the edge away from the corner");
    List<Bore> bores = new ArrayList<>(bores(belowIn));
    bores.addAll(bores(belowIn + nodesIn));
    return new Shape(
        "brace",
        member.size(),
        member.breadthIn(),
        member.depthIn(),
        built.tape().nearest(belowIn + nodesIn + aboveIn),
        0,
        ENDS,
        end,
        end,
        List.of(),
        bores);
  }

  double holeIn() {
    double boltIn = built.fastener(built.joint(Question.BRACE_JOINT)).orElseThrow().diameterIn();
    return boltIn + built.tables().factor("bolt-hole.over-most").amount();
  }

  /** On the middle line, about the middle of the lap. */
  private List<Bore> bores(double atIn) {
    List<Bore> bores = new ArrayList<>();
    JointRow joint = built.joint(Question.BRACE_JOINT);
    FastenerRow bolt = built.fastener(joint).orElseThrow();
    double apartIn =
        built.tables().factor("bolt-geometry.row.parallel.full").amount() * bolt.diameterIn();
    for (int i = 0; i < joint.count(); i++) {
      double offIn = (i - (joint.count() - 1) / 2.0) * apartIn;
      bores.add(
          new Bore(
              "side",
              built.tape().nearest(atIn + offIn),
              0,
              holeIn(),
              Length.inches(bolt.diameterIn()) + " bolt"));
    }
    return bores;
  }
}
