package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.scantling.concurrent.Lazy;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
import org.scantling.mechanics.FrameLoad;
import org.scantling.timber.AdjustedValues;

/**
 * How does a walk on brackets stand up? As plane frames: two posts under a crossbeam across the
 * walk, and a whole row of posts under its header along it, each with a knee brace on either side
 * of a post where there is a bay.
 *
 * <p>A row of posts is solved with its header cut as one line of timber is; the second board of a
 * pair lies turned end for end, and the wind is taken from both ends.
 *
 * <p>A bracket holds no moment, and what holds the top of a post to its beam passes none on, so the
 * braces alone keep both ways upright.
 */
public final class BracedWalk {
  /**
   * A sixteenth, as finely as a leg is measured. A beam a few thousandths long between two heads is
   * so stiff beside all else that nothing seems to hold them.
   */
  public static final double LEAST_APART_IN = 1.0 / 16;

  private final Geometry geometry;
  private final BracedTimbers timbers;
  private final HeaderChecks headers;
  private final HeaderRun row;
  private final Lazy<BracedWay> across;
  private final Lazy<BracedWay> along;

  /**
   * @param timbers sizes and legs as tried
   * @param headers the headers with their loads, in the same geometry
   * @param top loads on the open top
   * @param wind what the wind does to one post, each way
   */
  public BracedWalk(
      Geometry geometry,
      BracedTimbers timbers,
      HeaderChecks headers,
      TopLoads top,
      PostChecks.Standing wind) {
    this.geometry = geometry;
    this.timbers = timbers;
    this.headers = headers;
    this.row = headers.run().inFrame();
    this.across = new Lazy<>(() -> across(top, wind.across()));
    this.along = new Lazy<>(() -> along(wind.along()));
  }

  /**
   * True where braces of that leg find room both ways; a leg left over from other bays may not.
   * Heads nearer than {@link #LEAST_APART_IN} to each other or to the bracket meet.
   *
   * @param legIn 0 where posts stand too close for any
   */
  public static boolean fits(Geometry geometry, double legIn) {
    double apartIn = Math.min(geometry.plan().along().shortestIn(), geometry.plan().rowSpacingIn());
    double heightIn = geometry.headerTopIn() - geometry.headers().depthIn() / 2;
    return legIn > 0 && apartIn - 2 * legIn > LEAST_APART_IN && heightIn - legIn > LEAST_APART_IN;
  }

  Geometry geometry() {
    return geometry;
  }

  BracedTimbers timbers() {
    return timbers;
  }

  /** Two posts under a crossbeam; solved when it is first asked for. */
  BracedWay across() {
    return across.get();
  }

  /** A row of posts under its header; solved when it is first asked for. */
  BracedWay along() {
    return along.get();
  }

  private BracedWay across(TopLoads top, SidePush push) {
    BracedPlane plane = new BracedPlane(acrossOutline(), timbers, timbers.crossbeam());
    return BracedWay.of(plane, acrossLoads(plane, top, push), stabilityRatio());
  }

  private BracedWay along(SidePush push) {
    BracedPlane plane = new BracedPlane(alongOutline(), timbers, timbers.header());
    return BracedWay.of(plane, alongLoads(plane, push), stabilityRatio());
  }

  private BracedPlane.Outline acrossOutline() {
    double heightIn = geometry.crossbeamUndersideIn() + geometry.crossbeams().depthIn() / 2;
    return new BracedPlane.Outline(
        List.of(0.0, geometry.plan().rowSpacingIn()),
        geometry.crossbeamTailIn(),
        heightIn,
        timbers.legIn(),
        List.of());
  }

  private BracedPlane.Outline alongOutline() {
    List<Double> posts = new ArrayList<>();
    for (int post = 0; post <= row.splice().bayCount(); post++) {
      posts.add(row.geometry().plan().along().alongIn(post));
    }
    double heightIn = geometry.headerTopIn() - geometry.headers().depthIn() / 2;
    return new BracedPlane.Outline(
        posts, geometry.headerTailIn(), heightIn, timbers.legIn(), row.splice().cuts());
  }

  private BracedLoads acrossLoads(BracedPlane across, TopLoads top, SidePush push) {
    double strip = geometry.crossbeamSpacingIn();
    BracedLine beam = across.beam();
    List<FrameLoad> own = new ArrayList<>(across.postWeight(timbers.post().weightLbPerIn()));
    own.addAll(beam.everywhere(timbers.crossbeam().weightLbPerIn()));
    Map<LoadCombination, Double> besides = headers.besidesCrossbeamLb(timbers.header());
    List<BracedLoads.Person> people =
        Stream.of(geometry.plan().rowSpacingIn() / 2, timbers.legIn(), -geometry.crossbeamTailIn())
            .map(atIn -> new BracedLoads.Person(atIn, beam.point(atIn, top.personLb())))
            .toList();
    return new BracedLoads(
        own,
        beam.everywhere(TopLoads.lbPerIn(top.vinePsf(), strip)),
        beam.everywhere(TopLoads.lbPerIn(top.livePsf(), strip)),
        people,
        beam.everywhere(TopLoads.lbPerIn(top.snowPsf(), strip)),
        beam.everywhere(TopLoads.lbPerIn(top.windDownPsf(), strip)),
        beam.everywhere(-TopLoads.lbPerIn(top.postUpPsf(), strip)),
        across.push(push),
        besides::get);
  }

  private BracedLoads alongLoads(BracedPlane along, SidePush push) {
    HeaderLoad each = headers.eachCrossbeam();
    BracedLine beam = along.beam();
    List<FrameLoad> own = new ArrayList<>(along.postWeight(timbers.post().weightLbPerIn()));
    own.addAll(beam.everywhere(timbers.header().weightLbPerIn()));
    own.addAll(crossbeams(beam, each.deadLb()));
    own.addAll(moreAtPosts(beam));
    List<BracedLoads.Person> people =
        peopleAlongIn().stream()
            .map(atIn -> new BracedLoads.Person(atIn, beam.point(atIn, each.personLb())))
            .toList();
    return new BracedLoads(
        own,
        crossbeams(beam, each.vinesLb()),
        crossbeams(beam, each.liveLb()),
        people,
        crossbeams(beam, each.snowLb()),
        crossbeams(beam, each.windDownLb()),
        crossbeams(beam, -each.postUpLb()),
        along.push(push),
        combination -> 0);
  }

  private List<Double> peopleAlongIn() {
    List<Double> people = new ArrayList<>();
    for (double fromTipIn : row.peopleOnFrameFromTipIn()) {
      double fromPostIn = fromTipIn - geometry.headerTailIn();
      people.add(fromPostIn);
      if (!row.mirrored()) {
        people.add(row.geometry().lengthIn() - fromPostIn);
      }
    }
    return people;
  }

  private List<FrameLoad> crossbeams(BracedLine beam, double downLb) {
    List<FrameLoad> loads = new ArrayList<>();
    for (double atIn : row.geometry().crossbeamsAtIn()) {
      loads.add(beam.point(atIn, downLb));
    }
    return loads;
  }

  /** What two crossbeams side by side at a row of posts weigh more than one. */
  private List<FrameLoad> moreAtPosts(BracedLine beam) {
    Material crossbeam = timbers.crossbeam();
    double moreLb =
        (crossbeam.weightLbPerIn() - crossbeam.onePly().weightLbPerIn())
            * geometry.crossbeamLengthIn()
            / 2;
    List<FrameLoad> loads = new ArrayList<>();
    for (int post = 0; post <= row.splice().bayCount() && moreLb > 0; post++) {
      loads.add(beam.point(row.geometry().plan().along().alongIn(post), moreLb));
    }
    return loads;
  }

  private double stabilityRatio() {
    AdjustedValues post = timbers.post().lasting(1);
    return post.elasticityMinimum().psi() / post.elasticity().psi();
  }
}
