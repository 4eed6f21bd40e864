package org.scantling.judge;

import java.util.Map;

/** Fasteners at the crossing of crossbeam and header, and of header and post. */
final class JointJudge {
  private static final double WET_LATERAL = 0.7;
  private final Design design;
  private final Wind wind;
  private final Rows rows;
  private final CrossbeamJudge crossbeam;
  private final HeaderJudge header;

  JointJudge(Design design, Wind wind, Rows rows, CrossbeamJudge crossbeam, HeaderJudge header) {
    this.design = design;
    this.wind = wind;
    this.rows = rows;
    this.crossbeam = crossbeam;
    this.header = header;
  }

  void judge(Findings findings) {
    Map<String, String> joint = Tables.row("joints", design.decided("joint.crossbeam"));
    Combination load = Combination.LIFT;
    double lift = Math.max(0, crossbeam.edgeLiftLb());
    double push = load.wind() * wind.onCrossbeamLb() / 2;
    if (joint.get("way").equals("rated")) {
      findings.add(
          "joint.crossbeam",
          load,
          lift / Tables.number(joint, "rated_lift_lb")
              + push / Tables.number(joint, "rated_side_lb"),
          1);
    } else {
      double both = toeDriven(joint, lift, push);
      findings.add("joint.crossbeam", load, both, 1);
      if (alone()) {
        double rolls = crossbeam.rollingInLb(wind.onCrossbeamLb());
        findings.add("crossbeam.tipping", load, rolls / upright(joint) + both, 1);
      }
    }
    if (alone()) {
      crossbeam.judgeSideways(findings, wind.onCrossbeamLb());
    }
    Map<String, String> on = Tables.row("joints", design.decided("joint.header"));
    switch (on.get("way")) {
      case "bolted" -> bolted(findings, on);
      case "lagged" -> lagged(findings, on);
      default -> rated(findings, on);
    }
  }

  /** Whether nothing but its own fastenings keeps a crossbeam upright. */
  private boolean alone() {
    String blocking = design.decided("crossbeam.blocking");
    return blocking.isEmpty() || blocking.equals("none");
  }

  /**
   * What toe-driven fasteners hold against rolling over, about the lee edge: those of the windward
   * face have a lever of the breadth less a third of their length times tan 30, those of the lee
   * face only that third. The lee face has the lesser number.
   */
  private double upright(Map<String, String> joint) {
    double third = Tables.number(fastener(joint), "length_in") / 3 * Math.tan(Math.PI / 6);
    double breadth = design.need("crossbeam").stock().thicknessIn();
    double count = Tables.number(joint, "count");
    double lee = Math.ceil(count / 2);
    double windward = Math.floor(count / 2);
    return pullEach(joint) * (windward * (breadth - third) + lee * third);
  }

  private static Map<String, String> fastener(Map<String, String> joint) {
    return Tables.row("fasteners", joint.get("fastener"));
  }

  private double gravity() {
    return Math.min(
        design.need("crossbeam").wood().gravityRatio(),
        design.need("header").wood().gravityRatio());
  }

  private double pullEach(Map<String, String> joint) {
    Map<String, String> fastener = fastener(joint);
    double d = Tables.number(fastener, "diameter_in");
    double g = gravity();
    boolean nail = fastener.get("type").equals("nail");
    double perIn = nail ? 1380 * Math.pow(g, 2.5) * d * 0.25 : 2850 * g * g * d * WET_LATERAL;
    return perIn * deep(fastener) * 0.67 * 1.6;
  }

  private static double deep(Map<String, String> fastener) {
    double length = Tables.number(fastener, "length_in");
    return length * Math.cos(Math.toRadians(30)) - length / 3;
  }

  /** Toe-driven nails or screws, pulled and pushed: a straight line between the two. */
  private double toeDriven(Map<String, String> joint, double liftLb, double pushLb) {
    Map<String, String> fastener = fastener(joint);
    double count = Tables.number(joint, "count");
    double pull = pullEach(joint) * count;
    Yield yield =
        new Yield(
            Tables.number(fastener, "root_diameter_in"),
            Tables.number(fastener, "bending_yield_psi"));
    double bearing = yield.bearingPsi(gravity(), 90);
    double side = Tables.number(fastener, "length_in") / 3;
    double value = yield.single(deep(fastener), side, bearing, bearing, 90);
    double hold = value * 0.83 * 1.6 * WET_LATERAL * count;
    return liftLb / pull + pushLb / hold;
  }

  /**
   * Bolts in double shear; the worse board with all of the top and its own weight against one of
   * two planes. Wind along the walk pushes the boards lengthways, so what the bolts hold is the
   * resultant, at its angle.
   */
  private void bolted(Findings findings, Map<String, String> joint) {
    BoltedJudge bolts = new BoltedJudge(design, joint);
    for (int i = 0; i < header.posts(); i++) {
      for (Combination load : Combination.ALL) {
        double lift = load.up() ? Math.max(0, header.boardLiftLb(i, load)) : 0;
        double press = load.up() ? 0 : header.boardPressLb(i, load);
        double push = load.wind() * rows.mostTopAlongLb();
        double both = bolts.holdLb(lift + press, push, lift > 0);
        findings.add(
            "joint.header",
            load,
            Math.hypot(lift + press, push),
            both / 2 * load.duration() * WET_LATERAL);
      }
    }
  }

  private void lagged(Findings findings, Map<String, String> joint) {
    Map<String, String> lag = Tables.row("fasteners", joint.get("fastener"));
    double d = Tables.number(lag, "diameter_in");
    double g = design.need("post").wood().gravityRatio();
    double side = design.need("header").stock().depthIn() - design.need("header").notchIn();
    double main = Tables.number(lag, "length_in") - Tables.number(joint, "tip_in") - side;
    double thread = Math.min(Tables.number(joint, "thread_in"), main);
    double wetAndCount = WET_LATERAL * Tables.number(joint, "count");
    double pull = 1800 * Math.pow(g, 1.5) * Math.pow(d, 0.75) * thread * 0.75 * wetAndCount;
    Yield yield =
        new Yield(Tables.number(lag, "root_diameter_in"), Tables.number(lag, "bending_yield_psi"));
    Yield bearing = new Yield(d, 0);
    double value =
        yield.single(
            main,
            side,
            bearing.bearingPsi(g, 90),
            bearing.bearingPsi(design.need("header").wood().gravityRatio(), 90),
            90);
    double hold = value * Math.min(1, main / (8 * d)) * 0.67 * wetAndCount;
    lifted(findings, pull, hold, true);
  }

  private void rated(Findings findings, Map<String, String> joint) {
    lifted(
        findings,
        Tables.number(joint, "rated_lift_lb"),
        Tables.number(joint, "rated_side_lb"),
        false);
  }

  private void lifted(Findings findings, double pullLb, double holdLb, boolean lasting) {
    for (int i = 0; i < header.posts(); i++) {
      boolean end = i == 0 || i == header.posts() - 1;
      for (Combination load : Combination.ALL) {
        double push =
            load.wind()
                * Math.max(rows.mostTopAlongLb(), rows.mostTopAcrossLb(end) + wind.hungLb(end));
        double lift = Math.max(0, header.edgeLiftLb(i, load));
        double duration = lasting ? load.duration() : 1;
        findings.add("joint.header", load, push / duration, holdLb);
        double both = (push / holdLb + lift / pullLb) / duration;
        findings.add("joint.header-uplift", load, both, 1);
      }
    }
  }

  /** A lag from above has its head sunk into the header by as much as the head is high. */
  double sunkHeadIn() {
    Map<String, String> joint = Tables.row("joints", design.decided("joint.header"));
    return joint.get("way").equals("lagged")
        ? Tables.number(Tables.row("fasteners", joint.get("fastener")), "diameter_in")
        : 0;
  }
}
