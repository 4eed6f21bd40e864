package org.scantling.judge;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether the holes keep off the rock and under the frost: IBC 1809.5 asks the depth of the frost
 * of every footing that does not stand on solid rock itself.
 */
final class HoleJudge {
  private static final double CLOSE_IN = 0.07;

  private HoleJudge() {}

  static List<String> faults(Design design, Asked asked) {
    List<String> faults = new ArrayList<>();
    double depthIn = design.footing("depthIn");
    boolean post = !design.bracket() && !design.momentBase();
    double bedIn =
        Tables.value("shop", "footing.gravel-bed")
            + (post && !design.concrete() ? Tables.value("shop", "footing.pad-thickness") : 0);
    double bottomIn = depthIn + (design.onRock() ? 0 : bedIn);
    boolean allRock = design.criterionText("soil").equals("bedrock");
    if (!allRock && bottomIn > asked.rockIn() + CLOSE_IN) {
      faults.add("a hole " + bottomIn + " deep goes into rock at " + asked.rockIn());
    }
    if (design.onRock()) {
      if (Math.abs(depthIn - asked.rockIn()) > CLOSE_IN || !design.concrete()) {
        faults.add("on rock at " + asked.rockIn() + " stands a foot " + depthIn + " deep");
      }
    } else if (!allRock
        && !asked.byExperience()
        && depthIn < design.criterion("frostDepthIn") - CLOSE_IN) {
      faults.add("a foot " + depthIn + " deep stands in frost");
    }
    return faults;
  }
}
