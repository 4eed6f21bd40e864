package org.scantling.judge;

import java.util.Map;

/**
 * The metal base under a post as its row says it: what it is rated for, and how far it turns.
 *
 * @param row of the joints table; empty where posts stand in the ground
 */
record SoftBase(Map<String, String> row) {
  static SoftBase of(Design design) {
    return new SoftBase(
        design.momentBase() ? Tables.row("joints", design.decided("joint.base")) : Map.of());
  }

  boolean there() {
    return !row.isEmpty();
  }

  private double ratedInLb() {
    return 12 * Tables.number(row, "rated_moment_lb_ft");
  }

  /** The angle by which a moment turns it. */
  double turned(double momentInLb) {
    return there() ? momentInLb / ratedInLb() * Tables.number(row, "rated_turn_ratio") : 0;
  }

  /**
   * How much longer than on a firm foot the post buckles: the least root x of c h/EI cos x = x sin
   * x, found by small steps up from nothing, against a quarter turn.
   */
  double softer(double stiffness, double heightIn) {
    if (!there()) {
      return 1;
    }
    double held = heightIn / turned(1) / stiffness;
    double x = 0;
    while (held * Math.cos(x) > x * Math.sin(x)) {
      x += 1e-5;
    }
    return Math.PI / 2 / x;
  }

  /** Moment by itself, and with lift and push on a straight line; ratings are for wind, 1.6. */
  void judge(Findings findings, Combination load, double momentInLb, double liftLb, double sideLb) {
    double lasting = Math.min(1, load.duration() / 1.6);
    double bent = momentInLb / ratedInLb() / lasting;
    findings.add("joint.base", load, bent, 1);
    double both =
        bent
            + liftLb / Tables.number(row, "rated_lift_lb") / lasting
            + sideLb / Tables.number(row, "rated_side_lb") / lasting;
    findings.add("joint.base-together", load, both, 1);
  }
}
