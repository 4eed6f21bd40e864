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
import org.scantling.mechanics.BeamLoad;
import org.scantling.mechanics.ContinuousBeam;
import org.scantling.reasons.Checked;
import org.scantling.reasons.Source;

/**
 * One header: continuous over its posts with a tail past each end post, loaded where each crossbeam
 * sits on it, or by one person.
 */
public final class HeaderChecks {
  private static final String ROLE = "header";

  private final Geometry geometry;
  private final LoadedBeam loaded;
  private final HeaderLoad each;
  private final Limits limits;
  private final Function<String, Source> sources;
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
    this.geometry = geometry;
    this.limits = limits;
    this.sources = sources;
    this.each = new CrossbeamChecks(geometry, loads, limits, sources).onHeader(crossbeam, loads);
    this.loaded = new LoadedBeam(beam(), seats());
    this.pieces = Optional.empty();
  }

  private HeaderChecks(HeaderChecks whole, HeaderPieces pieces) {
    this.geometry = whole.geometry;
    this.limits = whole.limits;
    this.sources = whole.sources;
    this.each = whole.each;
    this.loaded = whole.loaded;
    this.pieces = Optional.of(pieces);
  }

  /** The same header where no timber sold is as long: checked as it runs and in its pieces. */
  public HeaderChecks cutOverPosts() {
    return new HeaderChecks(this, new HeaderPieces(geometry, each, limits, sources));
  }

  /**
   * Every check of that stock size, each with its worst combination.
   *
   * <p>Of a pair, one board is checked for the whole: a crossbeam that sags leans on the inner
   * board and lifts off the outer, and one that is pulled down at its tail leans on the outer
   * alone.
   */
  public List<Checked> of(Material material) {
    Geometry.Headers headers = geometry.headers();
    BeamChecks.Seating seating =
        new BeamChecks.Seating(
            ROLE,
            headers.notchIn(),
            geometry.posts().breadthIn(),
            geometry.posts().breadthIn(),
            !headers.paired(),
            geometry.headerTailIn(),
            geometry.plan().bayIn());
    List<Checked> checks =
        new ArrayList<>(new BeamChecks(loaded, seating, limits, sources).of(material.onePly()));
    pieces.ifPresent(each -> checks.addAll(each.of(material)));
    return checks;
  }

  /** The heaviest load on any post and the strongest lift, by combination. */
  List<PostLoad> onPosts(Material material) {
    List<PostLoad> all = new ArrayList<>();
    double[] vinesLb = loaded.vines().reactionsLb();
    for (BeamCase one : loaded.cases(material.weightLbPerIn())) {
      double[] reactionsLb = one.all().reactionsLb();
      double mostLb = 0;
      double leastLb = Double.POSITIVE_INFINITY;
      for (int post = 0; post < reactionsLb.length; post++) {
        // Vines may be cut back: where they hold a post down, they do not count.
        double helpLb = one.vines() ? Math.max(0, vinesLb[post]) : 0;
        mostLb = Math.max(mostLb, reactionsLb[post]);
        leastLb = Math.min(leastLb, reactionsLb[post] - helpLb);
      }
      all.add(new PostLoad(one.combination(), mostLb, Math.max(0, -leastLb)));
    }
    pieces.ifPresent(each -> all.addAll(each.onPosts(material)));
    return all;
  }

  private static double mostLb(BeamCase one) {
    double mostLb = 0;
    for (double reactionLb : one.all().reactionsLb()) {
      mostLb = Math.max(mostLb, reactionLb);
    }
    return mostLb;
  }

  private static double leastLb(BeamCase one) {
    double leastLb = Double.POSITIVE_INFINITY;
    for (double reactionLb : one.all().reactionsLb()) {
      leastLb = Math.min(leastLb, reactionLb);
    }
    return leastLb;
  }

  Geometry geometry() {
    return geometry;
  }

  /** What one crossbeam puts on this header. */
  HeaderLoad eachCrossbeam() {
    return each;
  }

  /**
   * What the hardest-worked post carries besides the crossbeam right over it: the most of every
   * combination, but the least under lifting wind, negative where the header pulls at the post.
   */
  Map<LoadCombination, Double> besidesCrossbeamLb(Material material) {
    Map<LoadCombination, Double> besides = new EnumMap<>(LoadCombination.class);
    for (BeamCase one : loaded.cases(material.weightLbPerIn())) {
      boolean lifts = one.combination() == LoadCombination.UPLIFT;
      double besideLb = (lifts ? leastLb(one) : mostLb(one)) - seatLb(one.combination());
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
  record PostLoad(LoadCombination combination, double downLb, double upLb) {}

  private ContinuousBeam beam() {
    double[] posts = new double[geometry.plan().bays() + 1];
    for (int i = 0; i < posts.length; i++) {
      posts[i] = geometry.headerTailIn() + i * geometry.plan().bayIn();
    }
    return ContinuousBeam.of(geometry.headerLengthIn(), posts);
  }

  private BeamLoads seats() {
    List<Double> places = geometry.crossbeamsAtIn().stream().map(this::fromTip).toList();
    return new BeamLoads(
        at(places, each.deadLb()),
        at(places, each.vinesLb()),
        bySpan(places, each.liveLb()),
        people(),
        bySpan(places, each.snowLb()),
        at(places, each.windDownLb()),
        at(places, -each.windUpLb()));
  }

  private List<List<BeamLoad>> bySpan(List<Double> places, double forceLb) {
    List<List<BeamLoad>> loads = new ArrayList<>();
    double[] marks = marks();
    for (int i = 0; i + 1 < marks.length; i++) {
      loads.add(between(places, marks[i], marks[i + 1], forceLb));
    }
    return loads;
  }

  /** The tips, the posts, and nothing else. */
  private double[] marks() {
    int posts = geometry.plan().bays() + 1;
    double[] marks = new double[posts + 2];
    for (int i = 0; i < posts; i++) {
      marks[i + 1] = geometry.headerTailIn() + i * geometry.plan().bayIn();
    }
    marks[posts + 1] = geometry.headerLengthIn();
    return marks;
  }

  /** A crossbeam over a post counts with the bay to its right; over a post it bends nothing. */
  private static List<BeamLoad> between(
      List<Double> places, double fromIn, double toIn, double forceLb) {
    List<BeamLoad> loads = new ArrayList<>();
    for (double place : places) {
      if (place >= fromIn && place < toIn) {
        loads.add(new BeamLoad.Point(place, forceLb));
      }
    }
    return loads;
  }

  private static List<BeamLoad> at(List<Double> places, double forceLb) {
    List<BeamLoad> loads = new ArrayList<>();
    places.forEach(place -> loads.add(new BeamLoad.Point(place, forceLb)));
    return loads;
  }

  /**
   * The tip, beside the first post, and the middle of the first two bays; over the second post too,
   * because a post between two bays carries most before anybody climbs up. By symmetry nothing else
   * is worse.
   */
  private List<BeamLoad> people() {
    List<BeamLoad> people = new ArrayList<>();
    peopleFromTipIn().forEach(at -> people.add(new BeamLoad.Point(at, each.personLb())));
    return people;
  }

  /** Places of one person worth trying, from the tip of the header. */
  List<Double> peopleFromTipIn() {
    List<Double> people = new ArrayList<>();
    double firstPostIn = geometry.headerTailIn();
    double bayIn = geometry.plan().bayIn();
    people.add(0.0);
    people.add(firstPostIn + geometry.posts().breadthIn() / 2);
    people.add(firstPostIn + bayIn / 2);
    if (geometry.plan().bays() > 1) {
      people.add(firstPostIn + 1.5 * bayIn);
      people.add(firstPostIn + bayIn);
    }
    return people;
  }

  private double fromTip(double fromFirstPostIn) {
    return geometry.headerTailIn() + fromFirstPostIn;
  }
}
