package org.scantling.confirm;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.BuriedFooting;
import org.scantling.ground.EffectiveWidth;
import org.scantling.ground.LateralLoad;
import org.scantling.ground.LateralResistance;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.ground.Uplift;
import org.scantling.ground.VerticalBearing;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.quantity.Check;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;

/** What the ground must do for one post: hold it upright, carry it, and keep it down. */
public final class FootingWork {
  private final Foot foot;
  private final Load load;

  /**
   * @param concrete true for concrete that fills the hole
   * @param postBreadthIn dressed breadth of the square post in the ground; 0 where it stands on a
   *     bracket on top of the concrete
   * @param soil presumptive values
   * @param isolatedFactor the increase for isolated posts that half an inch of movement does not
   *     hurt
   * @param weights of concrete and soil
   * @param gripRatio grip of tamped fill on the post over the weight of the soil beside it
   */
  public record Foot(
      boolean concrete,
      double postBreadthIn,
      PresumptiveSoil soil,
      double isolatedFactor,
      BallastWeights weights,
      double gripRatio) {}

  /** What stands on the ground. */
  public record Beams(Material header, Material post) {}

  /**
   * What one foot must hold, allowable-stress level.
   *
   * @param push sideways
   * @param heaviest the combination that presses most
   * @param heaviestLb what it presses with, the post included
   * @param liftLb strongest lift, what the weight above the foot holds taken off but for the post
   * @param postWeightLb weight of the post where it still counts against the lift, else 0
   */
  record Load(
      LateralLoad push,
      LoadCombination heaviest,
      double heaviestLb,
      double liftLb,
      double postWeightLb) {}

  /** Posts in the ground, each upright by itself. */
  public FootingWork(Foot foot, PostChecks.Standing standing, HeaderChecks headers, Beams beams) {
    this(foot, cantilever(standing, headers, beams));
  }

  /** Piers under the brackets of a braced walk. */
  public FootingWork(Foot foot, BracedFeet feet, double bracketHeightIn) {
    this(foot, feet.load(bracketHeightIn));
  }

  private FootingWork(Foot foot, Load load) {
    this.foot = foot;
    this.load = load;
  }

  private static Load cantilever(PostChecks.Standing standing, HeaderChecks headers, Beams beams) {
    SidePush push =
        standing.across().momentAtInLb(0) >= standing.along().momentAtInLb(0)
            ? standing.across()
            : standing.along();
    List<HeaderChecks.PostLoad> loads = headers.onPosts(beams.header());
    double postWeightLb = beams.post().weightLbPerIn() * push.heightIn();
    HeaderChecks.PostLoad heaviest =
        loads.stream().max(Comparator.comparingDouble(HeaderChecks.PostLoad::downLb)).orElseThrow();
    double windFactor = LoadCombination.UPLIFT.factor(LoadKind.WIND);
    return new Load(
        new LateralLoad(windFactor * push.forceLb(), push.resultantIn()),
        heaviest.combination(),
        heaviest.downLb() + postWeightLb,
        loads.stream().mapToDouble(HeaderChecks.PostLoad::upLb).max().orElse(0),
        postWeightLb);
  }

  /** Depth at which the ground holds the post upright, with a hole of that diameter. */
  public NonConstrainedEmbedment embedment(double holeDiameterIn) {
    EffectiveWidth width =
        foot.concrete()
            ? EffectiveWidth.concreteCollar(holeDiameterIn)
            : EffectiveWidth.squarePost(foot.postBreadthIn(), foot.postBreadthIn());
    return NonConstrainedEmbedment.of(
        load.push(),
        width,
        new LateralResistance(foot.soil().lateralPsfPerFt(), foot.isolatedFactor()));
  }

  /** Diameter at which the bottom of the hole carries the post. */
  public VerticalBearing bearing(double holeDiameterIn) {
    return VerticalBearing.of(
        load.heaviestLb(), VerticalBearing.circleIn2(holeDiameterIn), foot.soil().bearingPsf());
  }

  /** Every check of a hole of that depth and diameter. */
  public List<Checked> of(double depthIn, double holeDiameterIn, Function<String, Source> sources) {
    NonConstrainedEmbedment needed = embedment(holeDiameterIn);
    return List.of(
        checked(
            "embedment",
            LoadCombination.UPLIFT,
            sources,
            new Check(needed.depthIn(), depthIn),
            Unit.INCH),
        checked("bearing", load.heaviest(), sources, bearing(holeDiameterIn).check(), Unit.PSF),
        checked(
            "uplift",
            LoadCombination.UPLIFT,
            sources,
            uplift(depthIn, holeDiameterIn),
            Unit.POUND));
  }

  /** Depth at which weight alone keeps the post down; 0 where the timber does. */
  public double upliftDepthIn(double holeDiameterIn, double deepestIn) {
    for (double depthIn = 0; depthIn <= deepestIn; depthIn++) {
      if (uplift(Math.max(depthIn, 1), holeDiameterIn).passes()) {
        return depthIn;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private Check uplift(double depthIn, double holeDiameterIn) {
    double postIn2 = foot.postBreadthIn() * foot.postBreadthIn();
    BuriedFooting buried =
        foot.concrete()
            ? BuriedFooting.fullCollar(depthIn, holeDiameterIn, postIn2)
            : BuriedFooting.none(depthIn, postIn2);
    // The header's lift already has 0.6 of the weight above taken off; what is left must be held by
    // post and footing.
    Uplift held = Uplift.of(0, load.postWeightLb(), buried, foot.weights());
    double gripLb = foot.concrete() ? 0 : gripLb(depthIn);
    return new Check(load.liftLb(), held.resistanceLb() + gripLb);
  }

  /**
   * Grip on the four faces of a straight post: it grows with the weight of soil above each inch of
   * depth.
   */
  private double gripLb(double depthIn) {
    double meanPcfIn = foot.gripRatio() * foot.weights().soilPcf() * depthIn / 2;
    double facesIn2 = 4 * foot.postBreadthIn() * depthIn;
    return meanPcfIn * facesIn2 / CUBIC_INCHES_PER_CUBIC_FOOT;
  }

  private static final double CUBIC_INCHES_PER_CUBIC_FOOT = 1728;

  private static Checked checked(
      String name,
      LoadCombination combination,
      Function<String, Source> sources,
      Check check,
      Unit unit) {
    String id = "footing." + name;
    return new Checked(id, "footing", combination.id(), 1, check, unit, sources.apply(id));
  }
}
