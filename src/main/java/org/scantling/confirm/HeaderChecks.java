package org.scantling.confirm;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.scantling.design.Geometry;
import org.scantling.design.Splice;
import org.scantling.loads.LoadCombination;
import org.scantling.loads.LoadKind;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;

/**
 * One header over its posts with a tail past each end post, in the pieces that it is built of,
 * loaded where each crossbeam sits on it, or by one person.
 *
 * <p>Of a pair, the harder worked board takes a stated share of what both carry, wherever a board
 * or its bolts are checked: a crossbeam that sags leans on the inner board and lifts off the outer,
 * and one that is pulled down at its tail leans on the outer. Posts and footings carry all of it.
 */
public final class HeaderChecks {
  private static final String ROLE = "header";

  private final Geometry geometry;
  private final CrossbeamOnHeader crossbeam;
  private final SolvedBeams beams;
  private final Limits limits;
  private final Function<String, Source> sources;
  private final double sunkIn;
  private final Splice splice;

  /** What is solved: as the header is built, with alike bays in the middle left out. */
  private final HeaderRun run;

  private @Nullable LoadedBeam whole;
  private @Nullable LoadedBeam board;

  /**
   * @param crossbeam the crossbeams that were decided
   */
  public HeaderChecks(
      Geometry geometry,
      Material crossbeam,
      TopLoads loads,
      Limits limits,
      Function<String, Source> sources) {
    this(geometry, crossbeam, loads, limits, sources, new SolvedBeams());
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
    this(
        geometry,
        CrossbeamOnHeader.of(geometry, crossbeam, loads),
        limits,
        sources,
        beams,
        0,
        Splice.whole(geometry.plan().bays()));
  }

  private HeaderChecks(
      Geometry geometry,
      CrossbeamOnHeader crossbeam,
      Limits limits,
      Function<String, Source> sources,
      SolvedBeams beams,
      double sunkIn,
      Splice splice) {
    this.geometry = geometry;
    this.limits = limits;
    this.sources = sources;
    this.crossbeam = crossbeam;
    this.beams = beams;
    this.sunkIn = sunkIn;
    this.splice = splice;
    this.run = new HeaderRun(geometry, splice, crossbeam.load()).shortened();
  }

  /** Under all that the header carries. */
  private LoadedBeam whole() {
    if (whole == null) {
      whole = run.solved(beams);
    }
    return whole;
  }

  /** Under what the harder worked board of a pair takes. */
  private LoadedBeam board() {
    if (board == null) {
      HeaderLoad share = onBoard();
      board = share.equals(eachCrossbeam()) ? whole() : run.under(share).solved(beams);
    }
    return board;
  }

  /**
   * The same header whose lag screws are sunk into its top over the posts, where it hogs most.
   *
   * @param depthIn of the bores, counted over the whole breadth
   */
  public HeaderChecks withSinks(double depthIn) {
    return new HeaderChecks(geometry, crossbeam, limits, sources, beams, depthIn, splice);
  }

  /** The same header, with its sinks if it has any, in the pieces that it is built of. */
  public HeaderChecks inPieces(Splice splice) {
    return splice.equals(this.splice)
        ? this
        : new HeaderChecks(geometry, crossbeam, limits, sources, beams, sunkIn, splice);
  }

  /** Every check of that stock size, of a pair one board, each with its worst combination. */
  public List<Checked> of(Material material) {
    return checks(board()).of(material.onePly());
  }

  /** Which loads work each check hardest, in one board of a pair. */
  public BeamStory story(Material material) {
    return new BeamStory(List.of(checks(board())), material.onePly());
  }

  /** Which loads press hardest on a post, all boards of the header together. */
  public BeamStory storyOnPosts(Material material) {
    return new BeamStory(List.of(checks(whole())), material);
  }

  private BeamChecks checks(LoadedBeam loaded) {
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
            geometry.plan().bayIn(),
            1);
    return new BeamChecks(loaded, seating, limits, sources);
  }

  /**
   * The heaviest load on any post and the strongest lift, of all ways in which the loads of a
   * combination may lie: one entry a combination, since more load is never easier on a post, its
   * joint or its hole.
   */
  List<PostLoad> onPosts(Material material) {
    return PostLoad.worst(whole(), material.weightLbPerIn());
  }

  /** The same of one board of a pair, or of the timber on top: what its joint must hold. */
  List<PostLoad> ofBoardOnPosts(Material material) {
    return PostLoad.worst(board(), material.onePly().weightLbPerIn());
  }

  /**
   * What the end of a piece presses on its post or lifts off it, of a pair the end of one board;
   * none where nothing is cut.
   */
  List<PostLoad> onCutEnds(Material material) {
    return CutEnds.of(board()).worst(material.onePly().weightLbPerIn());
  }

  Geometry geometry() {
    return geometry;
  }

  /** The pieces that the header is built of. */
  Splice splice() {
    return splice;
  }

  /** What one crossbeam puts on this header. */
  public HeaderLoad eachCrossbeam() {
    return crossbeam.load();
  }

  /** The same with how it was worked. */
  public CrossbeamOnHeader crossbeam() {
    return crossbeam;
  }

  /** What of it one board of a pair takes; all of it where there is one timber. */
  public HeaderLoad onBoard() {
    return share().load();
  }

  /** The same with how it was worked. */
  public BoardShare share() {
    return BoardShare.of(boardShareRatio(), eachCrossbeam());
  }

  /** Share of the load that the harder worked board of a pair takes. */
  double boardShareRatio() {
    return geometry.headers().paired() ? limits.pairShareRatio() : 1;
  }

  /** The line that is solved, which has no more bays than tell something. */
  HeaderRun run() {
    return run;
  }

  /**
   * What the hardest-worked post carries besides the crossbeam right over it: the most of every
   * combination, but the least under lifting wind, negative where the header pulls at the post.
   */
  Map<LoadCombination, Double> besidesCrossbeamLb(Material material) {
    Map<LoadCombination, Double> besides = new EnumMap<>(LoadCombination.class);
    for (SupportCase one : whole().onSupports(material.weightLbPerIn())) {
      boolean lifts = one.combination() == LoadCombination.UPLIFT;
      double besideLb = (lifts ? one.leastLb() : one.mostLb()) - seatLb(one.combination());
      besides.merge(one.combination(), besideLb, lifts ? Math::min : Math::max);
    }
    return besides;
  }

  /** Largest shear in the header, of a pair in one board, by combination. */
  Map<LoadCombination, Double> shearLb(Material material) {
    Map<LoadCombination, Double> shear = new EnumMap<>(LoadCombination.class);
    board()
        .demands(material.onePly().weightLbPerIn())
        .forEach((combination, demand) -> shear.put(combination, demand.shearLb()));
    return shear;
  }

  private double seatLb(LoadCombination combination) {
    boolean lifts = combination == LoadCombination.UPLIFT;
    HeaderLoad each = eachCrossbeam();
    double windLb = lifts ? -each.postUpLb() : each.windDownLb();
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

    /** The most on any support of a beam of that weight and the strongest lift at any. */
    static List<PostLoad> worst(LoadedBeam beam, double ownWeightLbPerIn) {
      Map<LoadCombination, PostLoad> worst = new EnumMap<>(LoadCombination.class);
      double[] vinesLb = beam.vines().reactionsLb();
      for (SupportCase one : beam.onSupports(ownWeightLbPerIn)) {
        worst.merge(one.combination(), PostLoad.of(one, vinesLb), PostLoad::most);
      }
      return List.copyOf(worst.values());
    }

    private static PostLoad of(SupportCase one, double[] vinesLb) {
      double leastLb = Double.POSITIVE_INFINITY;
      for (int post = 0; post < one.supportCount(); post++) {
        // Vines may be cut back: where they hold a post down, they do not count.
        double helpLb = one.vines() ? Math.max(0, vinesLb[post]) : 0;
        leastLb = Math.min(leastLb, one.reactionLb(post) - helpLb);
      }
      return new PostLoad(one.combination(), one.mostLb(), Math.max(0, -leastLb));
    }

    PostLoad most(PostLoad other) {
      return new PostLoad(combination, Math.max(downLb, other.downLb), Math.max(upLb, other.upLb));
    }
  }
}
