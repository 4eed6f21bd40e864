package org.scantling.shop;

import org.scantling.design.TopLine;
import org.scantling.reasons.Question;

/** The line through the middle of the rail of one bay. */
final class RailLine {
  private final TopLine top;
  private final int row;
  private final int bay;
  private final double heightIn;

  /**
   * @param row 0 for the first, 1 for the second
   * @param bay counted from 0
   */
  RailLine(Built built, int row, int bay) {
    this.top = built.top();
    this.row = row;
    this.bay = bay;
    this.heightIn = built.number(Question.RAIL_HEIGHT);
  }

  /** Fall of the rail over its length in plan: as the ground falls, or none. */
  double fallRatio() {
    return top.headerFallRatio();
  }

  /** Height of the middle over the level line at the first post. */
  double overLineIn(Built built) {
    return built.tape().nearest(middleIn(0) - built.shop("setout.level-line"));
  }

  /**
   * Height over the datum at a place along the walk. A level rail is nowhere lower over the ground
   * than it was asked to be.
   */
  double middleIn(double alongIn) {
    if (top.follows()) {
      return heightIn + top.rowIn(row) - fallRatio() * alongIn;
    }
    return heightIn + top.groundIn(row, top.stepped() ? bay : 0);
  }
}
