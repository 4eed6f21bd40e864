package org.scantling.confirm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.ground.BallastWeights;
import org.scantling.ground.ConcreteOverSoil;
import org.scantling.ground.EffectiveWidth;
import org.scantling.ground.LateralLoad;
import org.scantling.ground.LateralResistance;
import org.scantling.ground.NonConstrainedEmbedment;
import org.scantling.ground.PresumptiveSoil;
import org.scantling.ground.TurningFoot;
import org.scantling.ground.VerticalBearing;
import org.scantling.loads.LoadCombination;
import org.scantling.quantity.Check;
import org.scantling.quantity.Inches;
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
   * @param stiffeningLbPerIn3 how fast the soil stiffens sideways with the depth; 0 on rock, which
   *     does not give
   * @param gripRatio grip of tamped fill on the post over the weight of the soil beside it
   */
  public record Foot(
      boolean concrete,
      double postBreadthIn,
      PresumptiveSoil soil,
      double isolatedFactor,
      BallastWeights weights,
      double stiffeningLbPerIn3,
      double gripRatio) {

    /** How far a point of a post moves because its foot turns in a hole of that depth. */
    double turnIn(LateralLoad push, double depthIn, double aboveGroundIn) {
      return stiffeningLbPerIn3 > 0 && push.forceLb() > 0
          ? new TurningFoot(push, depthIn, stiffeningLbPerIn3).movementIn(aboveGroundIn)
          : 0;
    }
  }

  /** What stands on the ground. */
  public record Beams(Material header, Material post) {}

  /**
   * What one foot must hold, allowable-stress level.
   *
   * @param pushes sideways, from each direction
   * @param heaviest what presses most
   * @param lifts by combination, what the weight above the foot holds taken off but for the post
   * @param post weight of the post where it still counts against the lift
   * @param slides by combination, what a bracket hands to its pier; none for posts in the ground
   */
  record Load(
      List<FootPush> pushes,
      FootLoad heaviest,
      List<HeaderChecks.PostLoad> lifts,
      PostWeight post,
      List<PierSliding.Push> slides) {}

  /** Posts in the ground, each upright by itself. */
  public FootingWork(Foot foot, PostChecks.Standing standing, HeaderChecks headers, Beams beams) {
    this(foot, cantilever(standing, headers, beams));
  }

  /** Piers under the brackets of a braced walk. */
  public FootingWork(Foot foot, BracedFeet feet, double bracketHeightIn) {
    this(foot, feet.load(bracketHeightIn));
  }

  /** Only what pushes sideways at a post in the ground; nothing stands on it and nothing lifts. */
  public static FootingWork sideways(Foot foot, PostChecks.Standing standing) {
    FootLoad none = FootLoad.solved(LoadCombination.UPLIFT, 0);
    return new FootingWork(
        foot, new Load(pushes(standing), none, List.of(), PostWeight.NONE, List.of()));
  }

  private FootingWork(Foot foot, Load load) {
    this.foot = foot;
    this.load = load;
  }

  private static Load cantilever(PostChecks.Standing standing, HeaderChecks headers, Beams beams) {
    List<HeaderChecks.PostLoad> loads = headers.onPosts(beams.header());
    PostWeight tallest = PostWeight.of(beams.post(), standing.across().heightIn());
    PostWeight lightest = PostWeight.of(beams.post(), standing.leastHeightIn());
    HeaderChecks.PostLoad heaviest =
        loads.stream().max(Comparator.comparingDouble(HeaderChecks.PostLoad::downLb)).orElseThrow();
    return new Load(pushes(standing), FootLoad.of(heaviest, tallest), loads, lightest, List.of());
  }

  private static List<FootPush> pushes(PostChecks.Standing standing) {
    return standing.pushes().stream()
        .map(
            push ->
                FootPush.of(
                    standing.isAlong(push) ? FootPush.Way.ALONG : FootPush.Way.ACROSS, push))
        .toList();
  }

  /**
   * Depth at which the ground holds the post upright against the wind from either side, with a hole
   * of that diameter.
   */
  public NonConstrainedEmbedment embedment(double holeDiameterIn) {
    return held(holeDiameterIn).needed();
  }

  /** The same with the push that asks for it. */
  public HeldFoot held(double holeDiameterIn) {
    return load.pushes().stream()
        .map(push -> new HeldFoot(push, embedment(push.load(), holeDiameterIn)))
        .max(Comparator.comparingDouble(each -> each.needed().depthIn()))
        .orElseThrow();
  }

  private NonConstrainedEmbedment embedment(LateralLoad push, double holeDiameterIn) {
    EffectiveWidth width =
        foot.concrete()
            ? EffectiveWidth.concreteCollar(holeDiameterIn)
            : EffectiveWidth.squarePost(foot.postBreadthIn(), foot.postBreadthIn());
    return NonConstrainedEmbedment.of(
        push, width, new LateralResistance(foot.soil().lateralPsfPerFt(), foot.isolatedFactor()));
  }

  /**
   * The pressure under a hole of that size, the concrete in it counted with what stands on it.
   *
   * <p>Of the concrete only what is heavier than the soil it replaces: that much the ground below
   * has always carried. The presumptive pressure is read so by common practice; the code does not
   * say.
   */
  public VerticalBearing bearing(double depthIn, double holeDiameterIn) {
    return borne(depthIn, holeDiameterIn).pressed();
  }

  /** The same with what presses. */
  public BorneFoot borne(double depthIn, double holeDiameterIn) {
    ConcreteOverSoil own = own(depthIn);
    VerticalBearing pressed =
        VerticalBearing.of(
            load.heaviest().loadLb(),
            VerticalBearing.circleIn2(holeDiameterIn),
            foot.soil().bearingPsf(),
            own.pressurePsf());
    return new BorneFoot(load.heaviest(), holeDiameterIn, own, pressed);
  }

  /**
   * Diameter at which the bottom of a hole carries the post, whatever its depth up to that one.
   *
   * @return the load that stands on it, against what its own concrete leaves of the soil's pressure
   */
  public VerticalBearing wideEnough(double deepestIn) {
    double bearingPsf = foot.soil().bearingPsf();
    double leftPsf = Math.max(bearingPsf - own(deepestIn).pressurePsf(), bearingPsf / 2);
    return VerticalBearing.of(load.heaviest().loadLb(), Inches.SQUARE_PER_SQUARE_FOOT, leftPsf);
  }

  private ConcreteOverSoil own(double depthIn) {
    return ConcreteOverSoil.of(foot.weights(), foot.concrete() ? depthIn : 0);
  }

  /** What holds it down against what lifts it most. */
  public HeldDown heldDown(double depthIn, double holeDiameterIn) {
    return lift().most(depthIn, holeDiameterIn);
  }

  /** The pier as it is nearest to sliding; none of posts in the ground. */
  public Optional<SlidPier> slid(double depthIn, double holeDiameterIn) {
    return pier().hardest(depthIn, holeDiameterIn);
  }

  /** Every check of a hole of that depth and diameter. */
  public List<Checked> of(double depthIn, double holeDiameterIn, Function<String, Source> sources) {
    NonConstrainedEmbedment needed = embedment(holeDiameterIn);
    HeldDown lifted = heldDown(depthIn, holeDiameterIn);
    List<Checked> checks = new ArrayList<>();
    checks.add(
        checked(
            "embedment",
            LoadCombination.UPLIFT,
            sources,
            new Check(needed.depthIn(), depthIn),
            Unit.INCH));
    checks.add(
        checked(
            "bearing",
            load.heaviest().combination(),
            sources,
            bearing(depthIn, holeDiameterIn).check(),
            Unit.PSF));
    checks.add(checked("uplift", lifted.combination(), sources, lifted.check(), Unit.POUND));
    slid(depthIn, holeDiameterIn)
        .ifPresent(
            pier ->
                checks.add(
                    checked(
                        "sliding",
                        pier.push().combination(),
                        sources,
                        pier.sliding().check(),
                        Unit.POUND)));
    return checks;
  }

  /** Depth at which base and side keep a pier where it is; 0 for posts in the ground. */
  public double slidingDepthIn(double holeDiameterIn, double deepestIn) {
    return pier().depthIn(holeDiameterIn, deepestIn);
  }

  private PierSliding pier() {
    return new PierSliding(foot, load.slides());
  }

  /** Depth at which weight alone keeps the post down; 0 where the timber does. */
  public double upliftDepthIn(double holeDiameterIn, double deepestIn) {
    return lift().depthIn(holeDiameterIn, deepestIn);
  }

  private FootLift lift() {
    return new FootLift(foot, load.lifts(), load.post());
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
