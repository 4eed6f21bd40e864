package org.scantling.confirm;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.NodeForce;

/** What the brackets of a braced walk hand down to their piers, the worst of all posts. */
public final class BracedFeet {
  private double pushLb;
  private double pressedLb;
  private double liftLb;
  private LoadCombination heaviest = LoadCombination.DEAD_ALONE;
  private final Map<LoadCombination, PierSliding.Push> slides =
      new EnumMap<>(LoadCombination.class);

  public BracedFeet(BracedWalk walk) {
    look(walk.across());
    look(walk.along());
  }

  private void look(BracedWay way) {
    for (BracedCase each : way.cases()) {
      for (int post = 0; post < way.plane().postCount(); post++) {
        NodeForce held = each.all().reaction(BracedPlane.foot(post));
        pushLb = Math.max(pushLb, Math.abs(held.xLb()));
        liftLb = Math.max(liftLb, -held.yLb());
        slides.merge(
            each.combination(),
            new PierSliding.Push(each.combination(), Math.abs(held.xLb()), held.yLb()),
            PierSliding.Push::worse);
        if (held.yLb() > pressedLb) {
          pressedLb = held.yLb();
          heaviest = each.combination();
        }
      }
    }
  }

  /**
   * The load on one pier; the weight of the post is in it already.
   *
   * @param bracketHeightIn of the post's foot above ground
   */
  FootingWork.Load load(double bracketHeightIn) {
    return new FootingWork.Load(
        List.of(FootPush.solved(pushLb, bracketHeightIn)),
        FootLoad.solved(heaviest, pressedLb),
        List.of(new HeaderChecks.PostLoad(LoadCombination.UPLIFT, 0, liftLb)),
        PostWeight.NONE,
        List.copyOf(slides.values()));
  }
}
