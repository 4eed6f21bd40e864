package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.mechanics.FrameLoad;
import org.scantling.mechanics.FrameResult;
import org.scantling.mechanics.Sway;

/**
 * A braced plane solved once for each kind of load, from which every combination follows by
 * addition, with the wind from the left and from the right.
 *
 * <p>The push of the wind is amplified by the vertical load on the leaning posts (P-Delta). The
 * load at which the plane would lean over by itself is worked out with E min, as the timber
 * standard does for single posts.
 */
final class BracedCases {
  private static final double TRIAL_LB = 100;

  /** Stands for a plane that leans over by itself; its checks then fail by far. */
  private static final double FALLS_OVER = 1000;

  private static final int OWN = 0;
  private static final int VINES = 1;
  private static final int LIVE = 2;
  private static final int SNOW = 3;
  private static final int WIND_DOWN = 4;
  private static final int WIND_UP = 5;
  private static final int PUSH = 6;
  private static final int ON_POSTS = 7;
  private static final int TRIAL = 8;
  private static final int PEOPLE = 9;

  private final BracedPlane plane;
  private final BracedLoads loads;
  private final double stabilityRatio;
  private final List<FrameResult> solved;

  /**
   * @param stabilityRatio E min over E of the posts
   */
  BracedCases(BracedPlane plane, BracedLoads loads, double stabilityRatio) {
    this.plane = plane;
    this.loads = loads;
    this.stabilityRatio = stabilityRatio;
    List<List<FrameLoad>> cases = new ArrayList<>();
    cases.add(loads.own());
    cases.add(loads.vines());
    cases.add(loads.live());
    cases.add(loads.snow());
    cases.add(loads.windDown());
    cases.add(loads.windUp());
    cases.add(loads.push());
    cases.add(plane.atTops(0, 1));
    cases.add(plane.atTops(TRIAL_LB, 0));
    loads.people().forEach(person -> cases.add(List.of(person.load())));
    this.solved = plane.frame().solve(cases);
  }

  /** Every combination, the wind from both sides where it has a part. */
  List<BracedCase> all() {
    List<BracedCase> all = new ArrayList<>();
    for (LoadCombination combination : LoadCombination.values()) {
      for (Still still : still(combination)) {
        add(all, combination, still);
      }
    }
    return all;
  }

  /**
   * A combination without the push.
   *
   * @param reach what is worth looking at
   */
  private record Still(double[] factors, BracedReach reach) {}

  private void add(List<BracedCase> all, LoadCombination combination, Still laid) {
    double[] factors = laid.factors();
    FrameResult still = FrameResult.combine(solved, factors);
    Sway sway = sway(still);
    double windFactor = combination.factor(LoadKind.WIND);
    double grown = windFactor * Math.min(FALLS_OVER, sway.amplifierFactor());
    double driftIn = Math.abs(grown * solved.get(PUSH).movement(plane.top(0)).xIn());
    double onPostLb = factors[ON_POSTS];
    if (!(windFactor > 0)) {
      all.add(new BracedCase(combination, laid.reach(), still, still, sway, 0, onPostLb));
      return;
    }
    for (double side : new double[] {grown, -grown}) {
      double[] pushed = factors.clone();
      pushed[PUSH] = side;
      FrameResult result = FrameResult.combine(solved, pushed);
      all.add(new BracedCase(combination, laid.reach(), result, still, sway, driftIn, onPostLb));
    }
  }

  /** The factors of a combination without the push, once for each thing live load can be. */
  private List<Still> still(LoadCombination combination) {
    double[] base = new double[solved.size()];
    boolean lifts = combination == LoadCombination.UPLIFT;
    base[OWN] = combination.factor(LoadKind.DEAD);
    // Vines hold the top down, so they are left out where that helps.
    base[VINES] = lifts ? 0 : combination.factor(LoadKind.VINES);
    base[SNOW] = combination.factor(LoadKind.SNOW);
    base[lifts ? WIND_UP : WIND_DOWN] = combination.factor(LoadKind.WIND);
    base[ON_POSTS] = loads.onPostLb().applyAsDouble(combination);
    List<Still> all = new ArrayList<>();
    double liveFactor = combination.factor(LoadKind.ROOF_LIVE);
    all.add(new Still(with(base, LIVE, liveFactor), plane.whole()));
    if (liveFactor > 0) {
      for (int person = 0; person < loads.people().size(); person++) {
        BracedReach near = BracedReach.near(plane, loads.people().get(person).atIn());
        all.add(new Still(with(base, PEOPLE + person, liveFactor), near));
      }
    }
    return all;
  }

  private static double[] with(double[] factors, int place, double factor) {
    double[] more = factors.clone();
    more[place] = factor;
    return more;
  }

  private Sway sway(FrameResult still) {
    double verticalLb = 0;
    for (int post = 0; post < plane.postCount(); post++) {
      verticalLb += still.reaction(BracedPlane.foot(post)).yLb();
    }
    double trialIn = Math.abs(solved.get(TRIAL).movement(plane.top(0)).xIn());
    return Sway.ofDrift(
        Math.max(0, verticalLb),
        TRIAL_LB * plane.postCount(),
        trialIn / stabilityRatio,
        plane.heightIn());
  }
}
