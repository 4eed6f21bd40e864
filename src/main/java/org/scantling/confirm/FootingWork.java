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
  private final List<SidePush> pushes;
  private final List<HeaderChecks.PostLoad> loads;
  private final double postWeightLb;

  /**
   * @param concrete true for a collar of concrete that fills the hole
   * @param postBreadthIn dressed breadth of the square post
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

  public FootingWork(Foot foot, PostChecks.Standing standing, HeaderChecks headers, Beams beams) {
    this.foot = foot;
    this.pushes = List.of(standing.across(), standing.along());
    this.loads = headers.onPosts(beams.header());
    this.postWeightLb = beams.post().weightLbPerIn() * standing.across().heightIn();
  }

  /** What stands on the ground. */
  public record Beams(Material header, Material post) {}

  /**
   * Depth at which the ground holds the post upright against the wind from either side, with a hole
   * of that diameter.
   */
  public NonConstrainedEmbedment embedment(double holeDiameterIn) {
    return pushes.stream()
        .map(push -> embedment(push, holeDiameterIn))
        .max(Comparator.comparingDouble(NonConstrainedEmbedment::depthIn))
        .orElseThrow();
  }

  private NonConstrainedEmbedment embedment(SidePush push, double holeDiameterIn) {
    EffectiveWidth width =
        foot.concrete()
            ? EffectiveWidth.concreteCollar(holeDiameterIn)
            : EffectiveWidth.squarePost(foot.postBreadthIn(), foot.postBreadthIn());
    double windFactor = LoadCombination.UPLIFT.factor(LoadKind.WIND);
    return NonConstrainedEmbedment.of(
        new LateralLoad(windFactor * push.forceLb(), push.resultantIn()),
        width,
        new LateralResistance(foot.soil().lateralPsfPerFt(), foot.isolatedFactor()));
  }

  /** Diameter at which the bottom of the hole carries the post. */
  public VerticalBearing bearing(double holeDiameterIn) {
    return VerticalBearing.of(
        heaviestLb(), VerticalBearing.circleIn2(holeDiameterIn), foot.soil().bearingPsf());
  }

  /** Every check of a hole of that depth and diameter. */
  public List<Checked> of(double depthIn, double holeDiameterIn, Function<String, Source> sources) {
    NonConstrainedEmbedment needed = embedment(holeDiameterIn);
    HeaderChecks.PostLoad heaviest = heaviest();
    return List.of(
        checked(
            "embedment",
            LoadCombination.UPLIFT,
            sources,
            new Check(needed.depthIn(), depthIn),
            Unit.INCH),
        checked(
            "bearing", heaviest.combination(), sources, bearing(holeDiameterIn).check(), Unit.PSF),
        checked(
            "uplift",
            mostLifted(depthIn, holeDiameterIn).combination(),
            sources,
            uplift(mostLifted(depthIn, holeDiameterIn), depthIn, holeDiameterIn),
            Unit.POUND));
  }

  /** Depth at which weight alone keeps the post down; 0 where the timber does. */
  public double upliftDepthIn(double holeDiameterIn, double deepestIn) {
    for (double depthIn = 0; depthIn <= deepestIn; depthIn++) {
      double triedIn = Math.max(depthIn, 1);
      if (uplift(mostLifted(triedIn, holeDiameterIn), triedIn, holeDiameterIn).passes()) {
        return depthIn;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Wind from below, or a person on a tail that tips the header off the next post. */
  private HeaderChecks.PostLoad mostLifted(double depthIn, double holeDiameterIn) {
    return loads.stream()
        .max(
            Comparator.<HeaderChecks.PostLoad>comparingDouble(
                    load -> uplift(load, depthIn, holeDiameterIn).ratio())
                .thenComparing(HeaderChecks.PostLoad::combination))
        .orElseThrow();
  }

  /**
   * What the weight above has not held down already, against post, footing and grip. Weight counts
   * as the combination has it: 0.6 against the wind, in full against a person.
   */
  private Check uplift(HeaderChecks.PostLoad load, double depthIn, double holeDiameterIn) {
    double postIn2 = foot.postBreadthIn() * foot.postBreadthIn();
    BuriedFooting buried =
        foot.concrete()
            ? BuriedFooting.fullCollar(depthIn, holeDiameterIn, postIn2)
            : BuriedFooting.none(depthIn, postIn2);
    Uplift held = Uplift.of(0, postWeightLb, buried, foot.weights());
    double weightLb = held.timberLb() + held.concreteLb() + held.soilLb();
    double gripLb = foot.concrete() ? 0 : gripLb(depthIn);
    return new Check(load.upLb(), load.combination().factor(LoadKind.DEAD) * weightLb + gripLb);
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

  private HeaderChecks.PostLoad heaviest() {
    return loads.stream()
        .max(Comparator.comparingDouble(HeaderChecks.PostLoad::downLb))
        .orElseThrow();
  }

  private double heaviestLb() {
    return heaviest().downLb() + postWeightLb;
  }

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
