package org.scantling.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Posts on brackets, braced both ways: a portal on pinned feet, the beam pinned on the posts, the
 * braces struts. Worked for weight and wind only, so that what is printed may be more and not less.
 */
final class BracedJudge {
  private static final int PARTS = 6;
  private static final double WET = 0.7;
  private static final double SLANT_DEGREES = 45;
  private final Design design;
  private final Wind wind;
  private final HeaderJudge header;
  private final Stock post;
  private final Wood wood;
  private final double legIn;

  BracedJudge(Design design, Wind wind, HeaderJudge header) {
    this.design = design;
    this.wind = wind;
    this.header = header;
    post = design.need("post").stock();
    wood = design.need("post").wood();
    legIn = Tables.number(design.decided("brace.leg"));
  }

  void judge(Findings findings) {
    double beamMiddle = design.need("header").stock().depthIn() / 2;
    double crossbeam = design.need("crossbeam").stock().depthIn() / 2;
    Push across =
        design.bays() == 1 ? wind.across(true) : heavier(wind.across(true), wind.across(false));
    Stock beam = design.need("crossbeam").stock();
    double acrossHeight = design.crossbeamTopIn() - crossbeam;
    frame(
        findings,
        across,
        List.of(design.layout("rowSpacingIn")),
        acrossHeight,
        new Beam(beam, design.need("crossbeam").wood(), design.pliesAtPosts(), true));
    frame(
        findings,
        wind.along(),
        design.baysIn(),
        design.layout("headerTopIn") - beamMiddle,
        new Beam(
            design.need("header").stock(),
            design.need("header").wood(),
            design.paired() ? 2 : 1,
            false));
  }

  /**
   * The timber that the braces hold on to.
   *
   * @param plies of it side by side
   * @param crossbeam true for the one across the walk, false for the header
   */
  private record Beam(Stock stock, Wood wood, int plies, boolean crossbeam) {
    double elasticityLb() {
      return wood.elasticityPsi() * plies;
    }
  }

  private static Push heavier(Push a, Push b) {
    return a.momentInLb() > b.momentInLb() ? a : b;
  }

  private void frame(Findings findings, Push push, List<Double> bays, double heightIn, Beam beam) {
    for (Combination load : List.of(Combination.PRESSED, Combination.LIFT)) {
      Frame frame = new Frame();
      double postEi = wood.elasticityPsi() * post.inertiaIn4();
      double postEa = wood.elasticityPsi() * post.areaIn2();
      double beamEi = beam.elasticityLb() * beam.stock().inertiaIn4();
      double beamEa = beam.elasticityLb() * beam.stock().areaIn2();
      Stock brace = design.need("brace").stock();
      double braceEa = design.need("brace").wood().elasticityPsi() * brace.areaIn2();
      List<Integer> postBars = new ArrayList<>();
      List<Integer> braces = new ArrayList<>();
      List<Integer> tops = new ArrayList<>();
      List<Integer> knees = new ArrayList<>();
      List<Integer> beams = new ArrayList<>();
      double x = 0;
      for (int i = 0; i <= bays.size(); i++) {
        knees.add(post(frame, x, heightIn, postEa, postEi, push, load, postBars, tops));
        double weight =
            load.up()
                ? -header.liftLb(i % header.posts(), load)
                : header.pressLb(i % header.posts(), load);
        weight += load.dead() * secondLb();
        frame.load(
            tops.get(i), load.wind() * push.topLb() * push.topAtIn() / push.heightIn(), -weight);
        x += i < bays.size() ? bays.get(i) : 0;
      }
      x = 0;
      int turnLeft = frame.turn();
      for (int i = 0; i < bays.size(); i++) {
        double bay = bays.get(i);
        int left = frame.node(x + legIn, heightIn);
        int right = frame.node(x + bay - legIn, heightIn);
        int turnA = frame.turn();
        int turnB = frame.turn();
        int turnRight = frame.turn();
        beams.add(frame.bar(tops.get(i), left, beamEa, beamEi, turnLeft, turnA));
        beams.add(frame.bar(left, right, beamEa, beamEi, turnA, turnB));
        beams.add(frame.bar(right, tops.get(i + 1), beamEa, beamEi, turnB, turnRight));
        braces.add(frame.strut(knees.get(i), left, braceEa));
        braces.add(frame.strut(knees.get(i + 1), right, braceEa));
        turnLeft = turnRight;
        x += bay;
      }
      frame.solve();
      report(findings, load, frame, postBars, braces, tops, heightIn);
      if (beam.crossbeam()) {
        beams.forEach(bar -> split(findings, load, frame.ends(bar), beam));
      }
      double hold = boltedLb(load, beam);
      braces.forEach(bar -> findings.add("brace.joint", load, Math.abs(frame.ends(bar)[0]), hold));
    }
  }

  /** What the second of two crossbeams puts on a post. */
  private double secondLb() {
    Design.Member crossbeam = design.need("crossbeam");
    return (design.pliesAtPosts() - 1) * crossbeam.ownLbPerIn() * crossbeam.lengthIn() / 2;
  }

  /**
   * NDS 2018 3.4.3.2 at the recess over the post, and 3.4.3.3 past the bolt at half the depth, each
   * of two crossbeams with half of it; near the end the split weighs by the square.
   */
  private void split(Findings findings, Combination load, double[] ends, Beam beam) {
    Design.Member crossbeam = design.need("crossbeam");
    double shear = Math.max(Math.abs(ends[1]), Math.abs(ends[4])) / beam.plies();
    double thick = beam.stock().thicknessIn();
    double deep = beam.stock().depthIn();
    double plain = 2.0 / 3 * beam.wood().shearPsi() * load.duration() * thick;
    double left = deep - crossbeam.notchIn();
    findings.add("crossbeam.brace-shear", load, shear, plain * left * Math.pow(left / deep, 2));
    double tail = (crossbeam.lengthIn() - design.layout("rowSpacingIn")) / 2;
    double near = tail + legIn < 5 * deep ? 0.25 : 1;
    findings.add("crossbeam.brace-shear", load, shear, plain * deep / 2 * near);
  }

  /**
   * Single shear at 45 degrees, brace on beam or post; room and rows not counted off. Across the
   * walk the brace lies on both; along it on the broader of the two, packed out over the other.
   */
  private double boltedLb(Combination load, Beam beam) {
    Map<String, String> joint = Tables.row("joints", design.decided("joint.brace"));
    Map<String, String> bolt = Tables.row("fasteners", joint.get("fastener"));
    Yield yield =
        new Yield(Tables.number(bolt, "diameter_in"), Tables.number(bolt, "bending_yield_psi"));
    double thick = beam.stock().thicknessIn();
    double inBeam = beam.crossbeam() ? beam.plies() * thick : thick;
    double seatIn = design.paired() ? post.thicknessIn() + 2 * thick : thick;
    double offIn = beam.crossbeam() ? 0 : (seatIn - post.thicknessIn()) / 2;
    double onBeam = heldLb(yield, inBeam, beam.wood(), Math.max(0, -offIn));
    double onPost = heldLb(yield, post.thicknessIn(), wood, Math.max(0, offIn));
    double count = Tables.number(joint, "count");
    return count * Math.min(onBeam, onPost) * load.duration() * WET;
  }

  private double heldLb(Yield yield, double inIn, Wood other, double gapIn) {
    Design.Member brace = design.need("brace");
    double sideIn = brace.stock().thicknessIn();
    double along = yield.bearingPsi(brace.wood().gravityRatio(), 0);
    double slanting = yield.bearingPsi(other.gravityRatio(), SLANT_DEGREES);
    return gapIn > 0
        ? yield.apart(inIn, sideIn, slanting, along, new Yield.Gap(gapIn, SLANT_DEGREES))
        : yield.single(inIn, sideIn, slanting, along, SLANT_DEGREES);
  }

  private int post(
      Frame frame,
      double x,
      double heightIn,
      double ea,
      double ei,
      Push push,
      Combination load,
      List<Integer> postBars,
      List<Integer> tops) {
    int below = frame.node(x, 0);
    frame.pin(below);
    int turn = frame.turn();
    int knee = 0;
    double kneeIn = heightIn - legIn;
    for (int part = 1; part <= 2 * PARTS; part++) {
      double y = part <= PARTS ? kneeIn * part / PARTS : kneeIn + legIn * (part - PARTS) / PARTS;
      int node = frame.node(x, y);
      int next = frame.turn();
      postBars.add(frame.bar(below, node, ea, ei, turn, next));
      double share = part < PARTS ? kneeIn / PARTS : part > PARTS ? legIn / PARTS : 0;
      share = part == PARTS ? (kneeIn + legIn) / PARTS / 2 : share;
      share = part == 2 * PARTS ? share / 2 : share;
      frame.load(node, load.wind() * push.spreadLb() / heightIn * share, 0);
      knee = part == PARTS ? node : knee;
      below = node;
      turn = next;
    }
    tops.add(below);
    return knee;
  }

  private void report(
      Findings findings,
      Combination load,
      Frame frame,
      List<Integer> postBars,
      List<Integer> braces,
      List<Integer> tops,
      double heightIn) {
    for (int bar : postBars) {
      double moment = Math.max(Math.abs(frame.ends(bar)[2]), Math.abs(frame.ends(bar)[5]));
      findings.add(
          "post.bending", load, moment / post.sectionIn3(), wood.bendingPsi() * load.duration());
    }
    for (int bar : braces) {
      pressedOrPulled(findings, load, frame.ends(bar)[0]);
    }
    if (load == Combination.PRESSED) {
      for (int top : tops) {
        findings.add("post.drift", load, Math.abs(frame.alongIn(top)), heightIn / 60);
      }
    }
  }

  /** A brace is pressed by one wind and pulled by the other, there beside the hole of its bolt. */
  private void pressedOrPulled(Findings findings, Combination load, double forceLb) {
    Design.Member brace = design.need("brace");
    double force = Math.abs(forceLb);
    double long_ = legIn * Math.sqrt(2);
    double column = brace.wood().columnPsi(long_, brace.stock().thicknessIn(), load.duration());
    findings.add("brace.axial", load, force / brace.stock().areaIn2(), column);
    String bolt = Tables.row("joints", design.decided("joint.brace")).get("fastener");
    double hole = Tables.number(Tables.row("fasteners", bolt), "diameter_in") + 1.0 / 16;
    double net = brace.stock().thicknessIn() * (brace.stock().depthIn() - hole);
    findings.add("brace.axial", load, force / net, brace.wood().tensionPsi() * load.duration());
  }
}
