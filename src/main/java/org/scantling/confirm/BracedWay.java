package org.scantling.confirm;

import java.util.List;

/**
 * One way in which a braced walk stands: its plane, and every combination on it.
 *
 * @param plane the frame
 * @param cases every combination, the wind from both sides
 */
record BracedWay(BracedPlane plane, List<BracedCase> cases) {
  BracedWay {
    cases = List.copyOf(cases);
  }

  /**
   * @param stabilityRatio E min over E of the posts
   */
  static BracedWay of(BracedPlane plane, BracedLoads loads, double stabilityRatio) {
    return new BracedWay(plane, new BracedCases(plane, loads, stabilityRatio).all());
  }
}
