package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.scantling.design.Bays;
import org.scantling.design.Geometry;
import org.scantling.design.Point;
import org.scantling.reasons.Question;

/**
 * Puts the pieces of a list together again, from their marks and places alone, and looks whether
 * they meet: every notch over or around what sits in it, every hole over its fellow, to a
 * sixteenth.
 */
final class Fitting {
  static final Offset<Double> TAPE = within(1.0 / 16 + 1e-6);

  private final Built built;
  private final Pieces pieces;
  private final Geometry geometry;

  Fitting(Built built) {
    this.built = built;
    this.pieces = Pieces.of(built);
    this.geometry = built.geometry();
  }

  void check() {
    counts();
    pieces.all().forEach(this::sound);
    each("post", this::post);
    each("header", this::headerOnPosts);
    each("crossbeam", this::crossbeamOnHeaders);
    pairsAtPosts();
    each("blocking", this::blockBetweenCrossbeams);
    each("rail", this::railInPosts);
    each("picket", this::picketBetween);
    headersAreWhole();
    bolts();
    Apart apart = new Apart(built);
    apart.check();
    apart.bracesBesideHeaders();
  }

  private interface One {
    void check(Piece piece, Place place);
  }

  private void each(String role, One one) {
    for (Piece piece : pieces.of(role)) {
      piece.places().forEach(place -> one.check(piece, place));
    }
  }

  private void counts() {
    int bays = geometry.plan().bays();
    int pickets = 2 * picketsOfARow();
    assertThat(pieces.count("post")).isEqualTo(geometry.postCount());
    assertThat(pieces.count("crossbeam")).isEqualTo(geometry.crossbeamPieceCount());
    assertThat(pieces.count("blocking")).isEqualTo(blocks());
    assertThat(pieces.count("rail")).isEqualTo(built.has("rail") ? 2 * bays : 0);
    assertThat(pieces.count("picket")).isEqualTo(pickets);
    assertThat(pieces.count("block")).isEqualTo(built.paired() ? pickets : 0);
    assertThat(pieces.count("brace"))
        .isEqualTo(built.has("brace") ? geometry.postCount() + 4 * bays : 0);
    assertThat(pieces.all().stream().map(Piece::mark)).doesNotHaveDuplicates();
  }

  /** As many spaces in a bay as keep pickets no wider apart than in the longest. */
  private int picketsOfARow() {
    Bays along = geometry.plan().along();
    double count = built.find(Question.PICKETS).orElse(0);
    double gapIn = along.longestIn() / (count + 1);
    return count == 0
        ? 0
        : along.lengthsIn().stream()
            .mapToInt(bayIn -> (int) Math.ceil(bayIn / gapIn - 1e-9) - 1)
            .sum();
  }

  /** One between neighbours on each header, but none where the header steps down between them. */
  private int blocks() {
    int blocks = geometry.blockCount();
    boolean steps = blocks > 0 && built.top().stepped();
    return steps ? blocks - 2 * (geometry.plan().bays() - 1) : blocks;
  }

  private void sound(Piece piece) {
    Shape shape = piece.shape();
    for (Place place : piece.places()) {
      assertThat(place.first().toIn(place.last()))
          .as(piece.mark())
          .isCloseTo(shape.lengthIn(), TAPE);
    }
    double lastIn = 0;
    for (Recess recess : shape.recesses()) {
      assertThat(recess.fromIn()).as(piece.mark()).isGreaterThan(-1.0 / 16);
      assertThat(recess.toIn()).as(piece.mark()).isLessThan(shape.lengthIn() + 1.0 / 16);
      assertThat(recess.depthIn()).isBetween(0.1, shape.depthIn() / 2);
      assertThat(recess.acrossIn()).isLessThanOrEqualTo(shape.breadthIn() + 1.0 / 16);
      assertThat(recess.fromIn()).isGreaterThanOrEqualTo(lastIn);
      lastIn = recess.fromIn();
    }
    for (Bore bore : shape.bores()) {
      assertThat(bore.atIn())
          .as(piece.mark())
          .isBetween(bore.diameterIn(), shape.lengthIn() - bore.diameterIn());
      assertThat(Math.abs(bore.offIn())).isLessThan(shape.depthIn() / 2);
    }
  }

  private double groundIn(Point at) {
    double lowerIn = at.acrossIn() > 0 ? built.top().acrossIn() : 0;
    return -built.slopeRatio() * at.alongIn() - lowerIn;
  }

  private void post(Piece piece, Place place) {
    double depthIn = groundIn(place.first()) - place.first().upIn();
    double wantedIn =
        built.inTheGround()
            ? built.footings().depthIn()
            : -built.tables().thumb("footing.bracket-clearance").amount();
    boolean fallingUnderLevelTop = built.topLine().equals("level") && built.slopeRatio() > 0;
    if (fallingUnderLevelTop && built.inTheGround()) {
      assertThat(depthIn).isGreaterThanOrEqualTo(wantedIn - 1e-9);
    } else {
      assertThat(depthIn).as("depth of %s", piece.mark()).isCloseTo(wantedIn, within(1e-9));
    }
    assertThat(place.last().upIn() - place.first().upIn())
        .as("post top less hole bottom")
        .isCloseTo(piece.shape().lengthIn(), TAPE);
  }

  /** Every post carries a header: in a notch, under its plain underside, or between boards. */
  private void headerOnPosts(Piece piece, Place place) {
    if (built.paired()) {
      return;
    }
    if (geometry.headers().notchIn() == 0) {
      layOnPosts(piece, place);
      return;
    }
    assertThat(piece.shape().recesses()).isNotEmpty();
    double fit = built.shop("notch.fit");
    for (Recess notch : piece.shape().recesses()) {
      Point middle = place.at(notch.atIn());
      Place post = nearest("post", middle);
      double stretch = built.top().stretchRatio();
      double halfIn = geometry.posts().breadthIn() / 2;
      double fromIn = place.at(notch.fromIn()).alongIn();
      double toIn = place.at(notch.toIn()).alongIn();
      double lowIn = Math.min(fromIn, toIn);
      double highIn = Math.max(fromIn, toIn);
      // The header lies over the post by its half depth, so on a slope its marks lie a little off.
      double shiftIn =
          (piece.shape().depthIn() / 2 - notch.depthIn()) * built.top().headerFallRatio() / stretch;
      double coveredIn =
          Math.min(highIn - shiftIn, post.first().alongIn() + halfIn)
              - Math.max(lowIn - shiftIn, post.first().alongIn() - halfIn);
      assertThat(coveredIn * stretch)
          .as("%s on its post", piece.mark())
          .isCloseTo(notch.seat().widthIn(), TAPE);
      assertThat(notch.widthIn() - notch.seat().widthIn()).isBetween(-1.0 / 16, fit + 1.0 / 16);
      assertThat(notch.seat().widthIn())
          .isGreaterThanOrEqualTo(geometry.posts().breadthIn() * stretch / 2 - 1e-6);
      assertThat(overIn(middle, post))
          .as("%s over its post", piece.mark())
          .isCloseTo(piece.shape().depthIn() / 2 - notch.depthIn(), within(1.0 / 8));
    }
  }

  /** Without notches a header lies on the tops of its posts, at least by half of each. */
  private void layOnPosts(Piece piece, Place place) {
    assertThat(piece.shape().recesses()).isEmpty();
    double halfIn = geometry.posts().breadthIn() / 2 * built.top().stretchRatio();
    int carried = 0;
    for (Piece posts : pieces.of("post")) {
      for (Place post : posts.places()) {
        double onLineIn = onLineIn(topOf(post), place);
        double coveredIn =
            Math.min(onLineIn + halfIn, piece.shape().lengthIn()) - Math.max(onLineIn - halfIn, 0);
        boolean under = Math.abs(post.last().acrossIn() - place.first().acrossIn()) < 1e-9;
        if (under && coveredIn > 1.0 / 8) {
          carried++;
          assertThat(coveredIn).as("%s on its post", piece.mark()).isGreaterThan(halfIn - 1.0 / 16);
          assertThat(overIn(place.at(onLineIn), post))
              .as("%s over its post", piece.mark())
              .isCloseTo(piece.shape().depthIn() / 2, within(1.0 / 8));
        }
      }
    }
    assertThat(carried).as("posts under %s", piece.mark()).isPositive();
  }

  /** How far a point of a header lies over the line of the top of its post. */
  private double overIn(Point middle, Place post) {
    double fall = built.top().headerFallRatio();
    Point top = topOf(post);
    return (middle.upIn() - top.upIn() + (middle.alongIn() - top.alongIn()) * fall)
        / built.top().stretchRatio();
  }

  /** The middle of a post's top, without the long edge of a sloping cut. */
  private Point topOf(Place post) {
    double pointIn = geometry.posts().breadthIn() / 2 * built.top().headerFallRatio();
    return post.last().plus(0, -pointIn);
  }

  private void crossbeamOnHeaders(Piece piece, Place place) {
    clearOfPosts(piece, place);
    boolean across = piece.shape().recesses().get(0).seat().role().equals("boards and post");
    assertThat(piece.shape().recesses()).hasSize(built.paired() && !across ? 4 : 2);
    double boardIn = built.member("header").breadthIn();
    double offIn = across ? (geometry.posts().breadthIn() + boardIn) / 2 : 0;
    double seatIn = across ? geometry.posts().breadthIn() + 2 * boardIn : boardIn;
    for (Recess notch : piece.shape().recesses()) {
      assertThat(notch.seat().widthIn()).isCloseTo(seatIn, within(1e-9));
      assertThat(notch.widthIn() - notch.seat().widthIn()).isCloseTo(built.shop("notch.fit"), TAPE);
      for (int side : across ? new int[] {-1, 1} : new int[] {1}) {
        seated(piece, place.at(notch.atIn() + side * offIn), notch.depthIn());
      }
    }
  }

  /** Two crossbeams at each row of posts touch, lie over it, and are flush with its side. */
  private void pairsAtPosts() {
    if (!geometry.crossbeams().doubled()) {
      return;
    }
    double thickIn = built.member("crossbeam").breadthIn();
    double halfPostIn = geometry.posts().breadthIn() / 2;
    double stretch = built.top().stretchRatio();
    double leanIn =
        built.member("crossbeam").depthIn() * Math.abs(built.top().headerFallRatio()) + 1.0 / 16;
    for (int post = 0; post < built.top().posts(); post++) {
      double postIn = built.top().alongIn(post);
      List<Double> over =
          pieces.of("crossbeam").stream()
              .flatMap(each -> each.places().stream())
              .map(each -> (each.first().alongIn() - postIn) * stretch)
              .filter(each -> Math.abs(each) < halfPostIn + leanIn)
              .sorted()
              .toList();
      assertThat(over).as("crossbeams over post %s", post).hasSize(2);
      assertThat(over.get(1) - over.get(0)).as("side by side").isCloseTo(thickIn, TAPE);
      assertThat(Math.max(-over.get(0), over.get(1)) + thickIn / 2)
          .as("flush with a side of the post")
          .isCloseTo(halfPostIn, within(leanIn));
    }
  }

  /** On its header, from face to face of two crossbeams, as high as they are. */
  private void blockBetweenCrossbeams(Piece piece, Place place) {
    Point middle = place.at(piece.shape().lengthIn() / 2);
    Place header = under(middle);
    double standsIn = (built.member("header").depthIn() + piece.shape().depthIn()) / 2;
    assertThat(awayIn(middle, header)).as("%s stands", piece.mark()).isCloseTo(standsIn, TAPE);
    if (built.top().stepped()) {
      return;
    }
    for (Point end : List.of(place.first(), place.last())) {
      Place beam =
          pieces.of("crossbeam").stream()
              .flatMap(each -> each.places().stream())
              .min(
                  java.util.Comparator.comparingDouble(
                      each -> Math.abs(each.first().alongIn() - end.alongIn())))
              .orElseThrow();
      Point over = new Point(beam.first().alongIn(), end.acrossIn(), beam.first().upIn());
      double risesIn = (built.member("crossbeam").depthIn() - piece.shape().depthIn()) / 2;
      double halfIn = built.member("crossbeam").breadthIn() / 2;
      assertThat(end.toIn(over))
          .as("%s meets a crossbeam, tops flush", piece.mark())
          .isCloseTo(Math.hypot(halfIn, risesIn), TAPE);
    }
  }

  private void seated(Piece piece, Point seat, double notchIn) {
    Place header = under(seat);
    assertThat(seat.acrossIn())
        .as("%s over its header", piece.mark())
        .isCloseTo(header.first().acrossIn(), TAPE);
    double apartIn = awayIn(seat, header);
    double stacked = (built.member("header").depthIn() + piece.shape().depthIn()) / 2 - notchIn;
    assertThat(apartIn).as("%s sits on its header", piece.mark()).isCloseTo(stacked, TAPE);
    assertThat(onLineIn(seat, header))
        .as("%s finds a seat", piece.mark())
        .isBetween(-1e-6, header.first().toIn(header.last()) + 1e-6);
  }

  /** Two timbers are never in one place: what of a crossbeam lies over a post is cut away. */
  private void clearOfPosts(Piece piece, Place place) {
    for (Piece posts : pieces.of("post")) {
      for (Place post : posts.places()) {
        double reachIn = (geometry.posts().breadthIn() + piece.shape().breadthIn()) / 2;
        boolean over = Math.abs(post.first().alongIn() - place.first().alongIn()) < reachIn - 1e-6;
        if (over) {
          clearOf(post, piece, place);
        }
      }
    }
  }

  private void clearOf(Place post, Piece piece, Place place) {
    double fall = built.top().headerFallRatio();
    Point top = topOf(post);
    // The top of the post where the crossbeam stands, square to the line of the tops.
    double topIn = top.upIn() - fall * (place.first().alongIn() - top.alongIn());
    double underIn = place.first().upIn() - topIn;
    double intoIn = piece.shape().depthIn() / 2 - underIn / Math.hypot(1, fall);
    if (intoIn <= 1.0 / 16) {
      return;
    }
    double middleIn = post.first().acrossIn() - place.first().acrossIn();
    double halfIn = geometry.posts().breadthIn() / 2;
    assertThat(piece.shape().recesses())
        .as("%s lands on the post at %s by %s", piece.mark(), post.first(), intoIn)
        .anyMatch(
            each ->
                each.fromIn() <= middleIn - halfIn + 1.0 / 16
                    && each.toIn() >= middleIn + halfIn - 1.0 / 16
                    && each.depthIn() >= intoIn - 1.0 / 8);
  }

  private void railInPosts(Piece piece, Place place) {
    for (Point end : List.of(place.first(), place.last())) {
      Place post = nearest("post", end);
      int side = end.alongIn() < (place.first().alongIn() + place.last().alongIn()) / 2 ? 1 : -1;
      double faceIn = post.first().alongIn() + side * geometry.posts().breadthIn() / 2;
      Recess housing = housing(post, end);
      double fallIn = piece.shape().depthIn() * built.top().headerFallRatio();
      assertThat(side * (faceIn - end.alongIn()))
          .as("%s lies in its housing", piece.mark())
          .isCloseTo(housing.depthIn(), within(1.0 / 16 + fallIn / 2 + 1e-6));
      double share =
          (faceIn - place.first().alongIn()) / (place.last().alongIn() - place.first().alongIn());
      double railIn = place.first().upIn() + share * (place.last().upIn() - place.first().upIn());
      assertThat(post.first().upIn() + housing.atIn())
          .as("housing of %s", piece.mark())
          .isCloseTo(railIn, TAPE);
      assertThat(housing.widthIn())
          .isGreaterThanOrEqualTo(piece.shape().depthIn() + built.shop("notch.fit") - 1.0 / 16);
      assertThat(housing.acrossIn())
          .isGreaterThanOrEqualTo(
              (geometry.posts().breadthIn()
                          + Math.min(piece.shape().breadthIn(), geometry.posts().breadthIn()))
                      / 2
                  - 1.0 / 16);
    }
  }

  /** The housing of the post that stands there whose height is nearest to the rail's end. */
  private Recess housing(Place post, Point end) {
    Piece piece =
        pieces.of("post").stream()
            .filter(each -> each.places().contains(post))
            .findFirst()
            .orElseThrow();
    return piece.shape().recesses().stream()
        .min((a, b) -> Double.compare(offIn(a, post, end), offIn(b, post, end)))
        .orElseThrow();
  }

  private static double offIn(Recess housing, Place post, Point end) {
    return Math.abs(post.first().upIn() + housing.atIn() - end.upIn());
  }

  private void picketBetween(Piece piece, Place place) {
    Place rail = nearest("rail", place.first());
    Place header =
        nearest(
            "header",
            new Point(place.last().alongIn(), place.last().acrossIn(), place.last().upIn()));
    double railTop = awayIn(place.first(), rail) - built.member("rail").depthIn() / 2;
    assertThat(railTop).as("%s stands on its rail", piece.mark()).isCloseTo(0, within(0.25));
    double under =
        Math.abs(upAt(header, place.last().alongIn()) - place.last().upIn())
            - built.member("header").depthIn() / 2;
    assertThat(under).as("%s meets its header", piece.mark()).isCloseTo(0, within(0.25));
  }

  private static double upAt(Place place, double alongIn) {
    double share =
        (alongIn - place.first().alongIn()) / (place.last().alongIn() - place.first().alongIn());
    return place.first().upIn() + share * (place.last().upIn() - place.first().upIn());
  }

  /** How far the long lower edge of a plumb cut reaches past the joint. */
  private static double overJointIn(Shape shape) {
    double overIn = 0;
    for (EndCut end : List.of(shape.first(), shape.last())) {
      boolean lower = end instanceof EndCut.Sloping cut && cut.longEdge().equals("the lower edge");
      overIn += lower ? ((EndCut.Sloping) end).setBackIn() : 0;
    }
    return overIn;
  }

  /** Laid end to end, the pieces of a line of header are as long as the header, without a gap. */
  private void headersAreWhole() {
    double all = 0;
    for (Piece piece : pieces.of("header")) {
      all += piece.count() * (piece.shape().lengthIn() - overJointIn(piece.shape()));
    }
    int lines = built.paired() ? 4 : 2;
    if (!built.topLine().equals("stepped")) {
      double stretched =
          geometry.lengthIn() * built.top().stretchRatio() + 2 * geometry.headerTailIn();
      assertThat(all / lines).isCloseTo(stretched, within(pieces.count("header") / 32.0 + 1e-6));
    }
    assertThat(geometry.plan().along().overallIn()).isCloseTo(geometry.lengthIn(), within(1e-9));
  }

  /**
   * Every hole of a board has its fellow in the other board of the pair, and wood of a post
   * between.
   */
  private void bolts() {
    if (!built.paired()) {
      return;
    }
    List<Point> holes = new ArrayList<>();
    each(
        "header",
        (piece, place) -> piece.shape().bores().forEach(bore -> holes.add(hole(place, bore))));
    double gapIn = geometry.posts().breadthIn() + built.member("header").breadthIn();
    for (Point hole : holes) {
      assertThat(holes.stream().filter(each -> fellows(each, hole, gapIn)))
          .as("fellows of the hole at %s", hole)
          .hasSize(1);
      double offIn = Math.abs(nearestPostIn(hole) - hole.alongIn());
      assertThat(offIn)
          .as("wood beside the hole at %s", hole)
          .isLessThan(geometry.posts().breadthIn() / 2 - 0.5);
    }
    assertThat(holes).hasSize(2 * new HeaderBolts(built).count());
  }

  private static boolean fellows(Point one, Point other, double gapIn) {
    return Math.abs(Math.abs(one.acrossIn() - other.acrossIn()) - gapIn) < 1e-6
        && Math.hypot(one.alongIn() - other.alongIn(), one.upIn() - other.upIn()) < 1.0 / 64;
  }

  private double nearestPostIn(Point hole) {
    return pieces.of("post").stream()
        .flatMap(piece -> piece.places().stream())
        .mapToDouble(place -> place.first().alongIn())
        .boxed()
        .min((a, b) -> Double.compare(Math.abs(a - hole.alongIn()), Math.abs(b - hole.alongIn())))
        .orElseThrow();
  }

  private Point hole(Place place, Bore bore) {
    double fall = built.top().headerFallRatio();
    double stretch = Math.hypot(1, fall);
    return place.at(bore.atIn()).plus(bore.offIn() * fall / stretch, bore.offIn() / stretch);
  }

  /** The nearest header that reaches as far along the walk as the seat lies. */
  private Place under(Point seat) {
    return pieces.of("header").stream()
        .flatMap(piece -> piece.places().stream())
        .filter(place -> onLineIn(seat, place) >= -1e-6)
        .filter(place -> onLineIn(seat, place) <= place.first().toIn(place.last()) + 1e-6)
        .min((a, b) -> Double.compare(awayIn(seat, a), awayIn(seat, b)))
        .orElseThrow(() -> new AssertionError("no header under " + seat));
  }

  private Place nearest(String role, Point point) {
    Place best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Piece piece : pieces.of(role)) {
      for (Place place : piece.places()) {
        double away = awayIn(point, place);
        if (away < least) {
          least = away;
          best = place;
        }
      }
    }
    return best;
  }

  private static double onLineIn(Point point, Place line) {
    double lengthIn = line.first().toIn(line.last());
    double dot =
        (point.alongIn() - line.first().alongIn())
                * (line.last().alongIn() - line.first().alongIn())
            + (point.acrossIn() - line.first().acrossIn())
                * (line.last().acrossIn() - line.first().acrossIn())
            + (point.upIn() - line.first().upIn()) * (line.last().upIn() - line.first().upIn());
    return dot / lengthIn;
  }

  /** From a point to the middle line of a piece. */
  private static double awayIn(Point point, Place line) {
    double lengthIn = line.first().toIn(line.last());
    double along = Math.max(0, Math.min(lengthIn, onLineIn(point, line)));
    return point.toIn(line.at(along));
  }
}
