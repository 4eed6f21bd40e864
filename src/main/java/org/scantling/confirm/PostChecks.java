package org.scantling.confirm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.mechanics.SpringFoot;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;
import org.scantling.timber.AdjustedValues;
import org.scantling.timber.BeamLoading;
import org.scantling.timber.BeamStability;
import org.scantling.timber.Bending;
import org.scantling.timber.BucklingLength;
import org.scantling.timber.Column;
import org.scantling.timber.Rectangle;

/**
 * One post held by the ground and free at the top: slenderness, crushing, and bending by the wind
 * across and along the walk together with the load it carries, at the ground and where a rail is
 * housed; and its sway.
 */
public final class PostChecks {
  private static final String ROLE = "post";
  private static final double FIRM_INLB = Double.POSITIVE_INFINITY;

  private final List<HeaderChecks.PostLoad> loads;
  private final Standing standing;
  private final Ground ground;
  private final Limits limits;
  private final Function<String, Source> sources;
  private final double alongOffIn;
  private final double turningInLb;

  /**
   * @param across wind square to the walk
   * @param along wind along the walk
   * @param housingDepthIn depth of the recess for a rail, 0 for none
   * @param housingAtIn height above ground of the edge of it at which the post is bent harder
   * @param housedFaces faces with such a recess: 2 where a post stands between two bays
   * @param high the posts of the row on the higher ground, where one stands higher
   */
  public record Standing(
      SidePush across,
      SidePush along,
      double housingDepthIn,
      double housingAtIn,
      int housedFaces,
      Optional<HighRow> high) {

    /** On ground that is level across the walk: all posts are alike. */
    public Standing(
        SidePush across,
        SidePush along,
        double housingDepthIn,
        double housingAtIn,
        int housedFaces) {
      this(across, along, housingDepthIn, housingAtIn, housedFaces, Optional.empty());
    }

    /** Every push that a post must bear: of either row, across the walk and along it. */
    List<SidePush> pushes() {
      List<SidePush> pushes = new ArrayList<>(List.of(across, along));
      high.ifPresent(row -> pushes.addAll(List.of(row.across().push(), row.along().push())));
      return pushes;
    }

    boolean isAlong(SidePush push) {
      return push == along || high.filter(row -> push == row.along().push()).isPresent();
    }

    /** The most that comes to the top of a post from one direction. */
    double mostTopLb(FootPush.Way way) {
      boolean lengthwise = way == FootPush.Way.ALONG;
      double lowLb = (lengthwise ? along : across).topLb();
      return high.map(row -> lengthwise ? row.along() : row.across())
          .map(shared -> Math.max(lowLb, shared.push().topLb()))
          .orElse(lowLb);
    }

    /** How high the shorter posts stand: all of them where both rows stand alike. */
    double leastHeightIn() {
      return high.map(HighRow::heightIn).orElse(across.heightIn());
    }

    /**
     * What the recesses leave of a square post; they are cut in the faces along the walk.
     *
     * @param faces 1, or 2 where the post stands between two bays
     */
    Rectangle left(Rectangle post, int faces, boolean bentAlong) {
      double goneIn = faces * housingDepthIn;
      return bentAlong ? post.notched(goneIn) : post.turned().notched(goneIn).turned();
    }
  }

  /**
   * @param header the header that was decided
   */
  public PostChecks(
      HeaderChecks headers,
      Material header,
      Standing standing,
      Limits limits,
      Function<String, Source> sources) {
    this(headers.onPosts(header), standing, Ground.FIRM, limits, sources, 0, FIRM_INLB);
  }

  private PostChecks(
      List<HeaderChecks.PostLoad> loads,
      Standing standing,
      Ground ground,
      Limits limits,
      Function<String, Source> sources,
      double alongOffIn,
      double turningInLb) {
    this.turningInLb = turningInLb;
    this.alongOffIn = alongOffIn;
    this.ground = ground;
    this.loads = loads;
    this.standing = standing;
    this.limits = limits;
    this.sources = sources;
  }

  /**
   * A post by itself under stated loads: what a table of posts is about.
   *
   * @param deadLb permanent load on its top
   * @param liveLb load on its top that comes and goes
   */
  public static PostChecks under(
      double deadLb,
      double liveLb,
      Standing standing,
      Limits limits,
      Function<String, Source> sources) {
    List<HeaderChecks.PostLoad> loads =
        Arrays.stream(LoadCombination.values())
            .map(
                each ->
                    new HeaderChecks.PostLoad(
                        each,
                        each.factor(LoadKind.DEAD) * deadLb
                            + each.factor(LoadKind.ROOF_LIVE) * liveLb,
                        0))
            .toList();
    return new PostChecks(loads, standing, Ground.FIRM, limits, sources, 0, FIRM_INLB);
  }

  /** The same post where the ground that holds it bends it harder and lets its foot turn. */
  public PostChecks heldBy(PostInGround inGround) {
    return new PostChecks(loads, standing, inGround, limits, sources, alongOffIn, turningInLb);
  }

  /** The same post where its load acts that far off its middle, along the walk. */
  public PostChecks loadedOffIn(double offIn) {
    return new PostChecks(loads, standing, ground, limits, sources, offIn, turningInLb);
  }

  /**
   * The same post on a base that turns as it is bent.
   *
   * @param inLb moment that would turn it by one, in in-lb; endless for a foot that does not turn
   */
  public PostChecks onBase(double inLb) {
    return new PostChecks(loads, standing, ground, limits, sources, alongOffIn, inLb);
  }

  /** K_e of the post: that of a flagpole, the more the softer the base is on which it stands. */
  private double endFactor(Rectangle section, AdjustedValues values, double heightIn) {
    double stiffnessLbIn2 = values.elasticityMinimum().psi() * section.secondMomentIn4();
    return limits.cantileverFactor()
        * new SpringFoot(turningInLb, stiffnessLbIn2, heightIn).softeningFactor();
  }

  /** What the foot of a post hands to the base that holds it, by combination and direction. */
  List<BaseForce> onItsBase(Material material) {
    return loads.stream()
        .flatMap(load -> pushes().map(push -> onItsBase(load, material, push)))
        .toList();
  }

  /**
   * Wind, and the load that stands off the middle and leans with the post: as far as a post may
   * sway, so that the base does not depend on how deep the pier goes.
   */
  private BaseForce onItsBase(HeaderChecks.PostLoad load, Material material, SidePush push) {
    PostScene scene = scene(load, material, push);
    PostSway sway = sway(load, material, push);
    double foundIn =
        sway.stands() ? sway.leaningIn() + ground.turnIn(push, sway.windFactor()) : push.heightIn();
    double swayIn = Math.max(mostSwayIn(push), foundIn);
    return new BaseForce(
        load.combination(),
        sway.windFactor() * push.momentAtInLb(0) + scene.pressedLb() * (scene.offsetIn() + swayIn),
        load.upLb(),
        sway.windFactor() * push.forceLb(),
        scene.pressedLb());
  }

  /** The load and the push that work pressure and bending together hardest in a combination. */
  public Optional<PostScene> hardest(Material material, LoadCombination combination) {
    return loads.stream()
        .filter(load -> load.combination() == combination)
        .flatMap(load -> pushes().map(push -> scene(load, material, push)))
        .max(Comparator.comparingDouble(PostScene::ratio));
  }

  /** The push that bends the post hardest in a combination. */
  public Optional<PostScene> mostBent(Material material, LoadCombination combination) {
    return loads.stream()
        .filter(load -> load.combination() == combination)
        .flatMap(load -> pushes().map(push -> scene(load, material, push)))
        .reduce((one, other) -> other.momentInLb() > one.momentInLb() ? other : one);
  }

  private PostScene scene(HeaderChecks.PostLoad load, Material material, SidePush push) {
    LoadCombination combination = load.combination();
    AdjustedValues values = material.lasting(limits.duration().of(combination));
    Rectangle section = material.section();
    PostForce pressed = new PostForce(load.downLb(), material.weightLbPerIn(), push.heightIn());
    return new PostScene(
        combination,
        section,
        pressed,
        new PostMoment(
            combination.factor(LoadKind.WIND), push.momentAtInLb(0), ground.bendingRatio(push)),
        0,
        standing.isAlong(push),
        column(pressed.lb(), push.heightIn(), section, values),
        stability(section, push, values),
        Math.max(
            limits.eccentricityShareRatio() * section.depthIn(),
            standing.isAlong(push) ? alongOffIn : 0),
        values);
  }

  /** Every check of that stock size, each with its worst combination. */
  public List<Checked> of(Material material) {
    CheckEnvelope worst = new CheckEnvelope(ROLE, limits, sources);
    for (HeaderChecks.PostLoad load : loads) {
      pushes().forEach(push -> check(worst, load, material, push));
      housing(worst, load, material);
    }
    return worst.list();
  }

  private void check(
      CheckEnvelope worst, HeaderChecks.PostLoad load, Material material, SidePush push) {
    LoadCombination combination = load.combination();
    PostScene scene = scene(load, material, push);
    Column column = scene.column();
    worst.add("compression", combination, column.check(), Unit.PSI);
    worst.addLasting("slenderness", combination, column.governing().check(), Unit.RATIO);
    worst.add("bending", combination, scene.bending().check(), Unit.PSI);
    worst.add("combined", combination, scene.combined().check(), Unit.RATIO);
    PostSway sway = sway(load, material, push);
    if (sway.windFactor() > 0 && sway.stands()) {
      double turnIn = ground.turnIn(push, sway.windFactor());
      worst.addLasting("drift", combination, sway.check(turnIn, mostSwayIn(push)), Unit.INCH);
    }
  }

  /** How a post of that size sways under each combination in which wind blows. */
  List<PostSway> sways(Material material) {
    return loads.stream()
        .filter(load -> load.combination().factor(LoadKind.WIND) > 0)
        .flatMap(load -> pushes().map(push -> sway(load, material, push)))
        .toList();
  }

  private Stream<SidePush> pushes() {
    return standing.pushes().stream();
  }

  private PostSway sway(HeaderChecks.PostLoad load, Material material, SidePush push) {
    PostScene scene = scene(load, material, push);
    double windFactor = load.combination().factor(LoadKind.WIND);
    double stiffness = scene.values().elasticity().psi() * material.section().secondMomentIn4();
    Column column = scene.column();
    return new PostSway(
        load.combination(),
        push,
        windFactor,
        windFactor * (push.swayIn(stiffness) + push.turnedIn(turningInLb)),
        1 - column.stressPsi() / column.governing().criticalStressPsi());
  }

  double mostSwayIn(SidePush push) {
    return limits.driftShareRatio() * push.heightIn();
  }

  private Column column(double downLb, double heightIn, Rectangle section, AdjustedValues values) {
    BucklingLength length = new BucklingLength(endFactor(section, values, heightIn), heightIn);
    return Column.of(
        downLb, section, new Column.Bracing(length, limits.straightnessFactor()), values);
  }

  private static BeamStability stability(Rectangle section, SidePush push, AdjustedValues values) {
    return BeamStability.of(
        section,
        BeamLoading.CANTILEVER_TIP_POINT.effective(push.heightIn(), section.depthIn()),
        values);
  }

  /** The load and the push that work what the housing of a rail leaves hardest. */
  public Optional<NotchScene> hardestAtNotch(Material material, LoadCombination combination) {
    return loads.stream()
        .filter(load -> load.combination() == combination)
        .flatMap(load -> atNotch(load, material))
        .max(Comparator.comparingDouble(NotchScene::ratio));
  }

  private void housing(CheckEnvelope worst, HeaderChecks.PostLoad load, Material material) {
    atNotch(load, material)
        .forEach(
            scene ->
                worst.add("rail-notch", load.combination(), scene.combined().check(), Unit.RATIO));
  }

  /** Both ways, at posts between two bays and at end posts; none where no rail is housed. */
  private Stream<NotchScene> atNotch(HeaderChecks.PostLoad load, Material material) {
    return standing.housingDepthIn() > 0
        ? IntStream.rangeClosed(1, standing.housedFaces())
            .boxed()
            .flatMap(
                faces ->
                    pushes()
                        .filter(push -> standing.housingAtIn() < push.heightIn())
                        .map(push -> atNotch(load, material, faces, push)))
        : Stream.empty();
  }

  private NotchScene atNotch(
      HeaderChecks.PostLoad load, Material material, int faces, SidePush push) {
    boolean along = standing.isAlong(push);
    LoadCombination combination = load.combination();
    AdjustedValues values = material.lasting(limits.duration().of(combination));
    double aboveIn = push.heightIn() - standing.housingAtIn();
    PostForce pressed = new PostForce(load.downLb(), material.weightLbPerIn(), aboveIn);
    double momentInLb =
        combination.factor(LoadKind.WIND) * push.momentAtInLb(standing.housingAtIn());
    Rectangle left = standing.left(material.section(), faces, along);
    double missIn = limits.eccentricityShareRatio() * material.section().depthIn();
    BeamStability stability = stability(left, push, values);
    return new NotchScene(
        combination,
        new NotchScene.Housing(faces, standing.housingDepthIn(), standing.housingAtIn()),
        left,
        pressed,
        push,
        momentInLb,
        along,
        NotchScene.Offsets.of(standing, faces, along, missIn),
        column(pressed.lb(), push.heightIn(), material.section(), values),
        Bending.of(momentInLb, left, values, stability),
        stability);
  }
}
