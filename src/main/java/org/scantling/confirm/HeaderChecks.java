package org.scantling.confirm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.scantling.design.Geometry;
import org.scantling.loads.LoadCombination;
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
  private final Limits limits;
  private final Function<String, Source> sources;

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
    HeaderLoad each =
        new CrossbeamChecks(geometry, loads, limits, sources).onHeader(crossbeam, loads);
    this.loaded = new LoadedBeam(beam(), seats(each));
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
    return new BeamChecks(loaded, seating, limits, sources).of(material.onePly());
  }

  /** The heaviest load on any post and the strongest lift, by combination. */
  List<PostLoad> onPosts(Material material) {
    List<PostLoad> all = new ArrayList<>();
    double[] vinesLb = loaded.vines().reactionsLb();
    for (BeamCase each : loaded.cases(material.weightLbPerIn())) {
      double[] reactionsLb = each.all().reactionsLb();
      double mostLb = 0;
      double leastLb = Double.POSITIVE_INFINITY;
      for (int post = 0; post < reactionsLb.length; post++) {
        // Vines may be cut back: where they hold a post down, they do not count.
        double helpLb = each.vines() ? Math.max(0, vinesLb[post]) : 0;
        mostLb = Math.max(mostLb, reactionsLb[post]);
        leastLb = Math.min(leastLb, reactionsLb[post] - helpLb);
      }
      all.add(new PostLoad(each.combination(), mostLb, Math.max(0, -leastLb)));
    }
    return all;
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

  private BeamLoads seats(HeaderLoad each) {
    List<Double> places = geometry.crossbeamsAtIn().stream().map(this::fromTip).toList();
    return new BeamLoads(
        at(places, each.deadLb()),
        at(places, each.vinesLb()),
        bySpan(places, each.liveLb()),
        people(each.personLb()),
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
  private List<BeamLoad> people(double personLb) {
    List<BeamLoad> people = new ArrayList<>();
    double firstPostIn = geometry.headerTailIn();
    double bayIn = geometry.plan().bayIn();
    people.add(new BeamLoad.Point(0, personLb));
    people.add(new BeamLoad.Point(firstPostIn + geometry.posts().breadthIn() / 2, personLb));
    people.add(new BeamLoad.Point(firstPostIn + bayIn / 2, personLb));
    if (geometry.plan().bays() > 1) {
      people.add(new BeamLoad.Point(firstPostIn + 1.5 * bayIn, personLb));
      people.add(new BeamLoad.Point(firstPostIn + bayIn, personLb));
    }
    return people;
  }

  private double fromTip(double fromFirstPostIn) {
    return geometry.headerTailIn() + fromFirstPostIn;
  }
}
