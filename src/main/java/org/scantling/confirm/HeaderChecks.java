package org.scantling.confirm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;

/**
 * One header: continuous over its posts with a tail past each end post, loaded where each crossbeam
 * sits on it, or by one person.
 */
public final class HeaderChecks {
  private static final String ROLE = "header";

  private final Geometry geometry;
  private final HeaderRun run;
  private final LoadedBeam loaded;
  private final HeaderLoad each;
  private final SolvedBeams beams;
  private final Limits limits;
  private final Function<String, Source> sources;
  private final double sunkIn;
  private final Optional<HeaderPieces> pieces;

  /**
   * @param crossbeam the crossbeams that were decided
   */
  public HeaderChecks(
      Geometry geometry,
      Material crossbeam,
      TopLoads loads,
      Limits limits,
      Function<String, Source> sources) {
    this(geometry, HeaderLoad.of(geometry, crossbeam, loads), limits, sources, new SolvedBeams());
  }

  /**
   * @param crossbeam the crossbeams that were decided
   * @param beams what was solved before, for who checks many
   */
  public HeaderChecks(
      Geometry geometry,
      Material crossbeam,
      TopLoads loads,
      Limits limits,
      Function<String, Source> sources,
      SolvedBeams beams) {
    this(geometry, HeaderLoad.of(geometry, crossbeam, loads), limits, sources, beams);
  }

  private HeaderChecks(
      Geometry geometry,
      HeaderLoad each,
      Limits limits,
      Function<String, Source> sources,
      SolvedBeams beams) {
    this.geometry = geometry;
    this.limits = limits;
    this.sources = sources;
    this.each = each;
    this.beams = beams;
    this.run = new HeaderRun(geometry, each);
    this.loaded = beams.of(geometry.headerLengthIn(), run.posts(), run.loads());
    this.sunkIn = 0;
    this.pieces = Optional.empty();
  }

  private HeaderChecks(HeaderChecks whole, double sunkIn, Optional<HeaderPieces> pieces) {
    this.geometry = whole.geometry;
    this.limits = whole.limits;
    this.sources = whole.sources;
    this.each = whole.each;
    this.beams = whole.beams;
    this.run = whole.run;
    this.loaded = whole.loaded;
    this.sunkIn = sunkIn;
    this.pieces = pieces;
  }

  /**
   * The same header whose lag screws are sunk into its top over the posts, where it hogs most.
   *
   * @param depthIn of the bores, counted over the whole breadth
   */
  public HeaderChecks withSinks(double depthIn) {
    return new HeaderChecks(this, depthIn, pieces);
  }

  /**
   * The same header, with its sinks if it has any, where no timber sold is as long: checked as it
   * runs and in its pieces.
   */
  public HeaderChecks cutOverPosts() {
    return new HeaderChecks(
        this,
        sunkIn,
        Optional.of(new HeaderPieces(geometry, each, sunkIn, limits, sources, beams)));
  }

  /** The same header where the top goes down in steps: a piece to every bay. */
  public HeaderChecks cutOverEveryPost() {
    HeaderPieces whole = new HeaderPieces(geometry, each, sunkIn, limits, sources, beams);
    return new HeaderChecks(this, sunkIn, Optional.of(whole.bayByBay()));
  }

  /**
   * Every check of that stock size, each with its worst combination.
   *
   * <p>Of a pair, one board is checked for the whole: a crossbeam that sags leans on the inner
   * board and lifts off the outer, and one that is pulled down at its tail leans on the outer
   * alone.
   */
  public List<Checked> of(Material material) {
    List<Checked> checks = new ArrayList<>(whole().of(material.onePly()));
    pieces.ifPresent(each -> checks.addAll(each.of(material)));
    return checks;
  }

  /** Which loads work each check hardest, in one board of a pair. */
  public BeamStory story(Material material) {
    List<BeamChecks> parts = new ArrayList<>();
    parts.add(whole());
    pieces.ifPresent(each -> parts.addAll(each.parts()));
    return new BeamStory(parts, material.onePly());
  }

  /** Which loads press hardest on a post, all boards of the header together. */
  public BeamStory storyOnPosts(Material material) {
    List<BeamChecks> parts = new ArrayList<>();
    parts.add(whole());
    pieces.ifPresent(each -> parts.add(each.longest()));
    return new BeamStory(parts, material);
  }

  private BeamChecks whole() {
    Geometry.Headers headers = geometry.headers();
    BeamChecks.Seating seating =
        new BeamChecks.Seating(
            ROLE,
            headers.notchIn(),
            sunkIn,
            geometry.posts().breadthIn(),
            geometry.posts().breadthIn(),
            !headers.paired(),
            geometry.headerTailIn(),
            geometry.plan().bayIn());
    return new BeamChecks(loaded, seating, limits, sources);
  }

  /**
   * The heaviest load on any post and the strongest lift, of all ways in which the loads of a
   * combination may lie: one entry a combination, since more load is never easier on a post, its
   * joint or its hole.
   */
  List<PostLoad> onPosts(Material material) {
    Map<LoadCombination, PostLoad> worst = new EnumMap<>(LoadCombination.class);
    double[] vinesLb = loaded.vines().reactionsLb();
    for (SupportCase one : loaded.onSupports(material.weightLbPerIn())) {
      worst.merge(one.combination(), PostLoad.of(one, vinesLb), PostLoad::most);
    }
    pieces.ifPresent(
        each ->
            each.onPosts(material)
                .forEach(load -> worst.merge(load.combination(), load, PostLoad::most)));
    return List.copyOf(worst.values());
  }

  /** What the end of a piece presses on its post or lifts off it; none where nothing is cut. */
  List<PostLoad> onCutEnds(Material material) {
    return pieces.map(each -> each.onEnds(material)).orElse(List.of());
  }

  Geometry geometry() {
    return geometry;
  }

  /** What one crossbeam puts on this header. */
  public HeaderLoad eachCrossbeam() {
    return each;
  }

  /** Places of one person worth trying, from the tip of the header. */
  List<Double> peopleFromTipIn() {
    return run.peopleFromTipIn();
  }

  /**
   * What the hardest-worked post carries besides the crossbeam right over it: the most of every
   * combination, but the least under lifting wind, negative where the header pulls at the post.
   */
  Map<LoadCombination, Double> besidesCrossbeamLb(Material material) {
    Map<LoadCombination, Double> besides = new EnumMap<>(LoadCombination.class);
    for (SupportCase one : loaded.onSupports(material.weightLbPerIn())) {
      boolean lifts = one.combination() == LoadCombination.UPLIFT;
      double besideLb = (lifts ? one.leastLb() : one.mostLb()) - seatLb(one.combination());
      besides.merge(one.combination(), besideLb, lifts ? Math::min : Math::max);
    }
    return besides;
  }

  /** Largest shear in the header, all plies together, by combination. */
  Map<LoadCombination, Double> shearLb(Material material) {
    Map<LoadCombination, Double> shear = new EnumMap<>(LoadCombination.class);
    for (BeamCase one : loaded.cases(material.weightLbPerIn())) {
      shear.merge(one.combination(), Math.abs(one.all().largestShear().amount()), Math::max);
    }
    return shear;
  }

  private double seatLb(LoadCombination combination) {
    boolean lifts = combination == LoadCombination.UPLIFT;
    double windLb = lifts ? -each.windUpLb() : each.windDownLb();
    return combination.factor(LoadKind.DEAD) * each.deadLb()
        + (lifts ? 0 : combination.factor(LoadKind.VINES) * each.vinesLb())
        + combination.factor(LoadKind.ROOF_LIVE) * each.liveLb()
        + combination.factor(LoadKind.SNOW) * each.snowLb()
        + combination.factor(LoadKind.WIND) * windLb;
  }

  /**
   * @param downLb heaviest load on a post
   * @param upLb strongest lift
   */
  record PostLoad(LoadCombination combination, double downLb, double upLb) {
    /** The most on any support, and the strongest lift at any. */
    static PostLoad of(SupportCase one, double[] vinesLb) {
      double leastLb = Double.POSITIVE_INFINITY;
      for (int post = 0; post < one.supportCount(); post++) {
        // Vines may be cut back: where they hold a post down, they do not count.
        double helpLb = one.vines() ? Math.max(0, vinesLb[post]) : 0;
        leastLb = Math.min(leastLb, one.reactionLb(post) - helpLb);
      }
      return new PostLoad(one.combination(), one.mostLb(), Math.max(0, -leastLb));
    }

    private PostLoad most(PostLoad other) {
      return new PostLoad(combination, Math.max(downLb, other.downLb), Math.max(upLb, other.upLb));
    }
  }
}
