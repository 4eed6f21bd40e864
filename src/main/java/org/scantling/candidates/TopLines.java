package org.scantling.candidates;

import static org.scantling.reasons.Question.*;

import org.scantling.answers.Answers;
import org.scantling.design.Geometry;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;

/** How the top of a set of answers runs over the ground. */
public final class TopLines {
  private TopLines() {}

  public static TopLine of(CheckContext context) {
    Answers answers = context.answers();
    String kind = answers.has(TOP_LINE) ? answers.option(TOP_LINE) : WayOfBuilding.LEVEL;
    return new TopLine(
        context.geometry(),
        kind,
        context.slopeRatio(),
        context.acrossIn(),
        intoGroundIn(context, answers),
        !context.overRock());
  }

  private static double intoGroundIn(CheckContext context, Answers answers) {
    boolean buried =
        answers.has(FOOTING_KIND) && answers.option(FOOTING_KIND).equals(WayOfBuilding.EMBEDDED);
    if (!buried) {
      return -context.tables().thumb("footing.bracket-clearance").amount();
    }
    return answers.has(FOOTING_DEPTH) ? answers.number(FOOTING_DEPTH) : 0;
  }

  /**
   * Where half of a post's load lies on its middle and half hangs beside it: how far off the middle
   * the whole acts.
   *
   * @param seatIn of the hanger, its load in the middle
   */
  static double hungOffIn(Geometry geometry, double seatIn) {
    return (geometry.posts().breadthIn() / 2 + seatIn / 2) / 2;
  }

  /** True where the top goes down in steps and there is a step at all. */
  public static boolean stepped(Answers answers) {
    return answers.has(TOP_LINE)
        && answers.option(TOP_LINE).equals(WayOfBuilding.STEPPED)
        && Integer.parseInt(answers.option(BAYS)) > 1;
  }
}
