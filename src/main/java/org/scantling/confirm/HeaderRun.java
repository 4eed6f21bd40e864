package org.scantling.confirm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.scantling.design.Geometry;
import org.scantling.design.Splice;
import org.scantling.mechanics.BeamLoad;

/**
 * One line of header timber from tip to tip over all its posts, in the pieces that it is built of,
 * and what lies on it.
 *
 * <p>The second board of a pair lies turned end for end, and loads lie alike from both ends, so
 * what works one line hardest works the other as hard. Between them the lines share the load of a
 * post, so no post carries more, or is lifted harder, than the worse of the two would by carrying
 * all.
 *
 * @param splice the pieces
 * @param each what one crossbeam puts on it
 */
record HeaderRun(Geometry geometry, Splice splice, HeaderLoad each) {
  private static final int FRAME_BAYS = 2;

  /**
   * A line in one piece is solved with no more bays: what is done to one bay is felt three or four
   * bays on by a hundredth.
   */
  private static final int MOST_BAYS = 16;

  /**
   * The same of a header in pieces, whose pieces do not feel each other at all: both end pieces and
   * two between them that meet show all that there is.
   */
  private static final int MOST_CUT_BAYS = 4;

  /**
   * The same of a frame, whose posts bear alike and are pushed alike, so that a longer row sways no
   * otherwise.
   */
  private static final int MOST_FRAME_BAYS = 8;

  /** Share of an end bay from its outer post at which even loads bend it most, by statics. */
  private static final double BENDS_MOST_SHARE = 0.4;

  /** The same line under another load. */
  HeaderRun under(HeaderLoad load) {
    return new HeaderRun(geometry, splice, load);
  }

  /** The same with fewer bays, where many are alike. */
  HeaderRun shortened() {
    return shortened(splice.pieceCount() == 1 ? MOST_BAYS : MOST_CUT_BAYS);
  }

  /** The same as a row of a frame. */
  HeaderRun inFrame() {
    return shortened(MOST_FRAME_BAYS);
  }

  private HeaderRun shortened(int mostBays) {
    if (!geometry.plan().along().even()) {
      return this;
    }
    Splice fewer = splice.shortened(mostBays);
    return fewer.bayCount() < splice.bayCount()
        ? new HeaderRun(geometry.inBays(fewer.bayCount()), fewer, each)
        : this;
  }

  LoadedBeam solved(SolvedBeams beams) {
    return beams
        .of(geometry.headerLengthIn(), posts(), splice.cuts(), loads())
        .withDeadTimes(each.deadLb());
  }

  /** Centres of the posts from the tip of the header. */
  double[] posts() {
    double[] posts = new double[geometry.plan().bays() + 1];
    for (int i = 0; i < posts.length; i++) {
      posts[i] = geometry.headerTailIn() + geometry.plan().along().alongIn(i);
    }
    return posts;
  }

  /**
   * The loads by kind, with 1 lb for the weight of each crossbeam; those that may lie on one span
   * alone are listed span by span.
   */
  private BeamLoads loads() {
    return new BeamLoads(
        weights(),
        points(each.vinesLb()),
        bySpan(each.liveLb()),
        BeamLoads.points(peopleFromTipIn(), each.personLb()),
        bySpan(each.snowLb()),
        points(each.windDownLb()),
        points(-each.windUpLb()),
        points(-each.postUpLb()));
  }

  /** On every crossbeam what lies on one where they are farthest apart, or its share of that. */
  private List<BeamLoad> points(double forceLb) {
    return points(place -> true, forceLb);
  }

  private List<BeamLoad> points(DoublePredicate fromTipIn, double forceLb) {
    return geometry.crossbeamPlaces().stream()
        .filter(place -> fromTipIn.test(fromTip(place.alongIn())))
        .<BeamLoad>map(
            place -> new BeamLoad.Point(fromTip(place.alongIn()), place.shareRatio() * forceLb))
        .toList();
  }

  private List<BeamLoad> weights() {
    return BeamLoads.points(geometry.crossbeamsAtIn().stream().map(this::fromTip).toList(), 1);
  }

  /** Places of one person worth trying, from the tip; on each piece that is unlike the others. */
  List<Double> peopleFromTipIn() {
    double besideIn = geometry.posts().breadthIn() / 2;
    Set<Double> people = new LinkedHashSet<>();
    if (splice.pieceCount() == 1) {
      people.addAll(PersonPlaces.on(geometry.headerLengthIn(), posts(), besideIn));
      people.addAll(onCrossbeams(posts()));
      return List.copyOf(people);
    }
    people.add(0.0);
    for (int piece : unlike()) {
      double[] posts =
          Arrays.copyOfRange(posts(), splice.firstPost(piece), splice.lastPost(piece) + 1);
      people.addAll(PersonPlaces.onPiece(posts, besideIn));
      people.addAll(onCrossbeams(posts));
      if (piece == splice.pieceCount() - 1) {
        people.add(geometry.headerLengthIn());
      }
    }
    return List.copyOf(people);
  }

  /**
   * A person on the crossbeam next to where all else on a piece of two bays or more bends its end
   * bays most.
   */
  private List<Double> onCrossbeams(double[] posts) {
    int last = posts.length - 1;
    return last < 2
        ? List.of()
        : Stream.of(
                posts[0] + BENDS_MOST_SHARE * (posts[1] - posts[0]),
                posts[last] - BENDS_MOST_SHARE * (posts[last] - posts[last - 1]))
            .map(this::nearestCrossbeamFromTipIn)
            .toList();
  }

  private double nearestCrossbeamFromTipIn(double fromTipIn) {
    return geometry.crossbeamsAtIn().stream()
        .map(this::fromTip)
        .min(Comparator.comparingDouble(place -> Math.abs(place - fromTipIn)))
        .orElseThrow();
  }

  /**
   * Those of them worth trying in the frame of a braced walk, where every place costs as much as a
   * wind: the tip, beside the first post, and of each piece that is unlike the others the middles
   * of its first bays and the post between them.
   */
  List<Double> peopleOnFrameFromTipIn() {
    double[] posts = posts();
    Set<Double> people = new LinkedHashSet<>();
    people.add(0.0);
    people.add(posts[0] + geometry.posts().breadthIn() / 2);
    for (int piece : unlike()) {
      int first = splice.firstPost(piece);
      int end = splice.lastPost(piece);
      int last = geometry.plan().along().even() ? Math.min(end, first + FRAME_BAYS) : end;
      for (int post = first; post < last; post++) {
        people.add((posts[post] + posts[post + 1]) / 2);
        people.add(posts[post + 1]);
      }
    }
    return List.copyOf(people);
  }

  /**
   * True where one half is the mirror of the other: wind from both ends then makes a person at one
   * place as good as one at the mirrored place.
   */
  boolean mirrored() {
    return geometry.plan().along().mirrored() && splice.equals(splice.turned());
  }

  /**
   * Of equal bays only the first and the last piece may be unlike those between; a whole header is
   * the same.
   */
  private Set<Integer> unlike() {
    int last = splice.pieceCount() - 1;
    if (!geometry.plan().along().even()) {
      return IntStream.rangeClosed(0, last).boxed().collect(Collectors.toCollection(TreeSet::new));
    }
    Set<Integer> unlike = new LinkedHashSet<>();
    unlike.add(0);
    unlike.add(Math.min(1, last));
    if (!mirrored()) {
      unlike.add(last);
    }
    return unlike;
  }

  private List<List<BeamLoad>> bySpan(double forceLb) {
    List<List<BeamLoad>> loads = new ArrayList<>();
    double[] marks = marks();
    for (int i = 0; i + 1 < marks.length; i++) {
      double fromIn = marks[i];
      double toIn = marks[i + 1];
      // A crossbeam over a post counts with the bay to its right; over a post it bends nothing.
      loads.add(points(place -> place >= fromIn && place < toIn, forceLb));
    }
    return loads;
  }

  /** The tips, the posts, and nothing else. */
  private double[] marks() {
    double[] posts = posts();
    double[] marks = new double[posts.length + 2];
    System.arraycopy(posts, 0, marks, 1, posts.length);
    marks[posts.length + 1] = geometry.headerLengthIn();
    return marks;
  }

  private double fromTip(double fromFirstPostIn) {
    return geometry.headerTailIn() + fromFirstPostIn;
  }
}
