package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.design.KneeBraces;
import org.scantling.design.Point;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.FastenerRow;
import org.scantling.tables.JointRow;

/**
 * The knee braces: at 45 degrees, lapping post and beam face to face. Legs run between middle
 * lines, as the checks take them.
 */
final class Braces {
  private static final Sayings SAYINGS = Sayings.of("pieces");
  private static final Shape.Ends ENDS = Shape.Ends.named("foot", "head");
  private static final double DEGREES = 45;
  private static final double SINE = Math.sqrt(0.5);

  private final Built built;
  private final Geometry geometry;
  private final Structure.Member member;
  private final TopLine top;
  private final KneeBraces braces;

  Braces(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.member = built.member("brace");
    this.top = built.top();
    this.braces = built.braces();
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
    List<Placed> placed = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      int toWalk = row == 0 ? 1 : -1;
      for (int post = 0; post < top.posts(); post++) {
        double rowIn = row * geometry.plan().rowSpacingIn();
        double headUpIn = headAcrossUpIn(post);
        double alongIn = top.alongIn(post) + offIn();
        Point foot = new Point(alongIn, rowIn, headUpIn - braces.legIn());
        Point head = new Point(alongIn, rowIn + toWalk * braces.legIn(), headUpIn);
        placed.add(placed(foot, head, braces.acrossLengthIn()));
      }
    }
    return placed;
  }

  private double offIn() {
    return KneeBraces.side(top) * (geometry.posts().breadthIn() + member.breadthIn()) / 2;
  }

  /** Middle of the crossbeam that stands over the post. */
  double headAcrossUpIn(int post) {
    return new Crossbeams(built).overPost(post).first().upIn();
  }

  private List<Placed> alongTheWalk() {
    List<Placed> placed = new ArrayList<>();
    double faceIn = beamFaceIn() + member.breadthIn() / 2;
    for (int row = 0; row < 2; row++) {
      int outward = row == 0 ? -1 : 1;
      for (KneeBraces.Along each : braces.along()) {
        double acrossIn =
            row * geometry.plan().rowSpacingIn() + (each.outside() ? outward : -outward) * faceIn;
        double postIn = top.alongIn(each.post());
        Point foot = new Point(postIn, acrossIn, each.footUpIn());
        Point head = new Point(postIn + each.towards() * each.legIn(), acrossIn, each.headUpIn());
        placed.add(placed(foot, head, braces.alongLengthIn(each)));
      }
    }
    return placed;
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

  private Placed placed(Point foot, Point head, double lengthIn) {
    Place nodes = new Place(foot, head);
    double nodesIn = foot.toIn(head);
    return new Placed(
        shape(nodesIn, lengthIn),
        new Place(nodes.at(-braces.belowIn()), nodes.at(lengthIn - braces.belowIn())));
  }

  private Shape shape(double nodesIn, double lengthIn) {
    EndCut end =
        new EndCut.Sloping(
            DEGREES, built.tape().nearest(member.depthIn()), SAYINGS.say("long.outer-edge"));
    List<Bore> bores = new ArrayList<>(bores(braces.belowIn()));
    bores.addAll(bores(braces.belowIn() + nodesIn));
    return new Shape(
        "brace",
        member.size(),
        member.breadthIn(),
        member.depthIn(),
        built.tape().nearest(lengthIn),
        0,
        ENDS,
        end,
        end,
        List.of(),
        bores);
  }

  double holeIn() {
    return bolt().diameterIn() + built.tables().factor("bolt-hole.over-most").amount();
  }

  private FastenerRow bolt() {
    return built.fastener(built.joint(Question.BRACE_JOINT)).orElseThrow();
  }

  /** Places of the bolts of one end, from the middle of the lap along the brace. */
  List<Double> offsIn() {
    JointRow joint = built.joint(Question.BRACE_JOINT);
    double apartIn =
        built.tables().factor("bolt-geometry.row.parallel.full").amount() * bolt().diameterIn();
    List<Double> offs = new ArrayList<>();
    for (int i = 0; i < joint.count(); i++) {
      offs.add((i - (joint.count() - 1) / 2.0) * apartIn);
    }
    return offs;
  }

  /** How far a bolt lies over or under the middle of its lap. */
  List<Double> offsUpIn() {
    return offsIn().stream().map(offIn -> offIn * SINE).toList();
  }

  /** On the middle line, about the middle of the lap. */
  private List<Bore> bores(double atIn) {
    List<Bore> bores = new ArrayList<>();
    for (double offIn : offsIn()) {
      bores.add(
          new Bore(
              "side",
              built.tape().nearest(atIn + offIn),
              0,
              holeIn(),
              new InchSizes(built).bolt(bolt().diameterIn())));
    }
    return bores;
  }
}
