package org.scantling.judge;

import java.util.Map;

/**
 * Bolts through two boards and the post between them, in dry wood under a lasting load: NDS 2018
 * 12.3 with the group factor of 11.3.6 and the geometry factors of Table 12.5.1. Two bolts stand
 * one above the other, four diameters from both edges of the boards, which wind loads in turn, and
 * not over five inches apart (12.5.1.3).
 */
final class BoltedJudge {
  private static final int IN_A_ROW = 2;
  private static final double MOST_APART_IN = 5;
  private final Design.Member post;
  private final Design.Member board;
  private final double diameterIn;
  private final double count;
  private final Yield yield;
  private final double apartIn;
  private final double toTopIn;

  BoltedJudge(Design design, Map<String, String> joint) {
    Map<String, String> bolt = Tables.row("fasteners", joint.get("fastener"));
    post = design.need("post");
    board = design.need("header");
    diameterIn = Tables.number(bolt, "diameter_in");
    count = Tables.number(joint, "count");
    yield = new Yield(diameterIn, Tables.number(bolt, "bending_yield_psi"));
    double deep = board.stock().depthIn();
    apartIn = Math.min(deep - 8 * diameterIn, MOST_APART_IN);
    toTopIn = (deep - apartIn) / 2;
  }

  double holdLb(double uprightLb, double lengthwaysLb, boolean lifted) {
    double degrees = Math.toDegrees(Math.atan2(lengthwaysLb, uprightLb));
    double most = Math.max(degrees, 90 - degrees);
    double one =
        yield.twice(
            post.stock().thicknessIn(),
            board.stock().thicknessIn(),
            yield.bearingPsi(post.wood().gravityRatio(), degrees),
            yield.bearingPsi(board.wood().gravityRatio(), 90 - degrees),
            most);
    return one * count * group() * placed(lifted);
  }

  /** What the places leave: 4D in a row, 4D to an end pushed away from, 7D to one pulled at. */
  private double placed(boolean lifted) {
    double end = toTopIn / ((lifted ? 7 : 4) * diameterIn);
    return Math.min(1, Math.min(end, apartIn / (4 * diameterIn)));
  }

  /** Equation 11.3-1; of boards loaded across the grain a strip of 4D counts. */
  private double group() {
    double main = post.wood().elasticityPsi() * post.stock().areaIn2();
    double side = board.wood().elasticityPsi() * 2 * board.stock().thicknessIn() * 4 * diameterIn;
    double slip = 180000 * Math.pow(diameterIn, 1.5);
    double u = 1 + slip * apartIn / 2 * (1 / main + 1 / side);
    double m = u - Math.sqrt(u * u - 1);
    double ratio = Math.min(main / side, side / main);
    double both = Math.pow(m, 2 * IN_A_ROW);
    return m
        * (1 - both)
        / (IN_A_ROW * ((1 + ratio * Math.pow(m, IN_A_ROW)) * (1 + m) - 1 + both))
        * (1 + ratio)
        / (1 - m);
  }
}
