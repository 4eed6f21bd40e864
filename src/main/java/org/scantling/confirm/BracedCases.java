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

  /** What is solved by itself; after these comes one case for each place of a person. */
  private enum Part {
    OWN,
    VINES,
    LIVE,
    SNOW,
    WIND_DOWN,
    WIND_UP,
    PUSH,
    ON_POSTS,
    TRIAL
  }

  /** How much of each case a combination counts. */
  private static final class Shares {
    private final double[] factors;

    private Shares(double[] factors) {
      this.factors = factors;
    }

    double[] factors() {
      return factors.clone();
    }

    static Shares none(int cases) {
      return new Shares(new double[cases]);
    }

    double of(Part part) {
      return factors[part.ordinal()];
    }

    Shares with(Part part, double factor) {
      return with(part.ordinal(), factor);
    }

    Shares withPerson(int person, double factor) {
      return with(Part.values().length + person, factor);
    }

    private Shares with(int place, double factor) {
      double[] more = factors.clone();
      more[place] = factor;
      return new Shares(more);
    }
  }

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
    for (Part part : Part.values()) {
      cases.add(loads(part));
    }
    loads.people().forEach(person -> cases.add(List.of(person.load())));
    this.solved = plane.frame().solve(cases);
  }

  private List<FrameLoad> loads(Part part) {
    return switch (part) {
      case OWN -> loads.own();
      case VINES -> loads.vines();
      case LIVE -> loads.live();
      case SNOW -> loads.snow();
      case WIND_DOWN -> loads.windDown();
      case WIND_UP -> loads.windUp();
      case PUSH -> loads.push();
      case ON_POSTS -> plane.atTops(0, 1);
      case TRIAL -> plane.atTops(TRIAL_LB, 0);
    };
  }

  private FrameResult solved(Part part) {
    return solved.get(part.ordinal());
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
  private record Still(Shares shares, BracedReach reach) {}

  private void add(List<BracedCase> all, LoadCombination combination, Still laid) {
    Shares shares = laid.shares();
    FrameResult still = FrameResult.combine(solved, shares.factors());
    Sway sway = sway(still);
    double windFactor = combination.factor(LoadKind.WIND);
    double grown = windFactor * Math.min(FALLS_OVER, sway.amplifierFactor());
    double driftIn = Math.abs(grown * solved(Part.PUSH).movement(plane.top(0)).xIn());
    double onPostLb = shares.of(Part.ON_POSTS);
    if (!(windFactor > 0)) {
      all.add(new BracedCase(combination, laid.reach(), still, still, sway, 0, onPostLb));
      return;
    }
    for (double side : new double[] {grown, -grown}) {
      FrameResult result = FrameResult.combine(solved, shares.with(Part.PUSH, side).factors());
      all.add(new BracedCase(combination, laid.reach(), result, still, sway, driftIn, onPostLb));
    }
  }

  /** The shares of a combination without the push, once for each thing live load can be. */
  private List<Still> still(LoadCombination combination) {
    boolean lifts = combination == LoadCombination.UPLIFT;
    // Vines hold the top down, so they are left out where that helps.
    double vinesFactor = lifts ? 0 : combination.factor(LoadKind.VINES);
    Shares base =
        Shares.none(solved.size())
            .with(Part.OWN, combination.factor(LoadKind.DEAD))
            .with(Part.VINES, vinesFactor)
            .with(Part.SNOW, combination.factor(LoadKind.SNOW))
            .with(lifts ? Part.WIND_UP : Part.WIND_DOWN, combination.factor(LoadKind.WIND))
            .with(Part.ON_POSTS, loads.onPostLb().applyAsDouble(combination));
    List<Still> all = new ArrayList<>();
    double liveFactor = combination.factor(LoadKind.ROOF_LIVE);
    all.add(new Still(base.with(Part.LIVE, liveFactor), plane.whole()));
    if (liveFactor > 0) {
      for (int person = 0; person < loads.people().size(); person++) {
        BracedReach near = BracedReach.near(plane, loads.people().get(person).atIn());
        all.add(new Still(base.withPerson(person, liveFactor), near));
      }
    }
    return all;
  }

  private Sway sway(FrameResult still) {
    double verticalLb = 0;
    for (int post = 0; post < plane.postCount(); post++) {
      verticalLb += still.reaction(BracedPlane.foot(post)).yLb();
    }
    double trialIn = Math.abs(solved(Part.TRIAL).movement(plane.top(0)).xIn());
    return Sway.ofDrift(
        Math.max(0, verticalLb),
        TRIAL_LB * plane.postCount(),
        trialIn / stabilityRatio,
        plane.heightIn());
  }
}
