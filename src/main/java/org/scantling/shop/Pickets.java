package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import org.scantling.design.Geometry;
import org.scantling.design.HeaderPiece;
import org.scantling.design.KneeBraces;
import org.scantling.design.Point;
import org.scantling.reasons.Question;
import org.scantling.sayings.Sayings;
import org.scantling.tables.SizeRow;

/**
 * The pickets, upright from rail to header, and the blocks between the boards of a pair that they
 * stand against.
 */
final class Pickets {
  private static final Sayings SAYINGS = Sayings.of("pieces");
  private static final Shape.Ends UPRIGHT = Shape.Ends.named("foot", "top");
  private static final Shape.Ends ACROSS = Shape.Ends.named("one", "other");

  private final Built built;
  private final Geometry geometry;
  private final SizeRow size;
  private final Tape tape;

  Pickets(Built built) {
    this.built = built;
    this.geometry = built.geometry();
    this.size = built.tables().size(word("picket." + built.market()));
    this.tape = built.tape();
  }

  private String word(String id) {
    return built.tables().defaults().row(id).word();
  }

  /** Pickets in a bay; as many are decided as stand in the longest. */
  private int in(int bay) {
    int inLongest = (int) Math.round(built.find(Question.PICKETS).orElse(0));
    return inLongest > 0 ? geometry.plan().along().spacesIn(bay, inLongest + 1) - 1 : 0;
  }

  /**
   * Middles of the pickets of a bay, from its first post, between the two ends of what they divide
   * evenly: the bay from post to post, or where a picket would stand in the brace across the walk
   * beside a post, what posts and brace leave open.
   */
  List<Double> dividing(int bay) {
    int count = in(bay);
    double bayIn = geometry.plan().along().lengthIn(bay);
    if (!built.has("brace")) {
      return evenly(count, 0, bayIn);
    }
    double postIn = geometry.posts().breadthIn() / 2;
    double braceIn = built.member("brace").breadthIn();
    if (bayIn / (count + 1) - size.thicknessIn() / 2 >= postIn + braceIn) {
      return evenly(count, 0, bayIn);
    }
    return KneeBraces.side(built.top()) > 0
        ? evenly(count, postIn + braceIn, bayIn - postIn)
        : evenly(count, postIn, bayIn - postIn - braceIn);
  }

  private static List<Double> evenly(int count, double fromIn, double toIn) {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i <= count + 1; i++) {
      places.add(fromIn + (toIn - fromIn) * i / (count + 1));
    }
    return places;
  }

  List<Placed> pickets() {
    List<Placed> pickets = new ArrayList<>();
    each((row, bay, alongIn) -> pickets.add(picket(row, bay, alongIn)));
    return pickets;
  }

  List<Placed> blocks() {
    List<Placed> blocks = new ArrayList<>();
    if (built.paired()) {
      each((row, bay, alongIn) -> blocks.add(block(row, bay, alongIn)));
    }
    return blocks;
  }

  private interface Spot {
    void at(int row, int bay, double alongIn);
  }

  private void each(Spot spot) {
    for (int row = 0; row < 2; row++) {
      for (int bay = 0; bay < geometry.plan().bays(); bay++) {
        List<Double> places = dividing(bay);
        for (double placeIn : places.subList(1, places.size() - 1)) {
          spot.at(row, bay, built.top().alongIn(bay) + placeIn);
        }
      }
    }
  }

  private Placed picket(int row, int bay, double alongIn) {
    double fall = Math.abs(built.top().headerFallRatio());
    double fromIn = railTopIn(row, bay, alongIn);
    double toIn = headerUnderIn(bay, alongIn);
    double pointIn = size.thicknessIn() / 2 * fall;
    double acrossIn = row * geometry.plan().rowSpacingIn();
    Shape shape =
        new Shape(
            "picket",
            size.id(),
            size.thicknessIn(),
            size.widthIn(),
            tape.nearest(toIn - fromIn + 2 * pointIn),
            0,
            UPRIGHT,
            end(fall, SAYINGS.say("long.last-post-edge")),
            end(fall, SAYINGS.say("long.first-post-edge")),
            List.of(),
            List.of());
    return new Placed(
        shape,
        new Place(
            new Point(alongIn, acrossIn, fromIn - pointIn),
            new Point(alongIn, acrossIn, toIn + pointIn)));
  }

  private EndCut end(double fall, String longEdge) {
    return fall > 0
        ? new EndCut.Sloping(
            Math.toDegrees(Math.atan(fall)), tape.nearest(size.thicknessIn() * fall), longEdge)
        : EndCut.square();
  }

  private double railTopIn(int row, int bay, double alongIn) {
    RailLine rail = new RailLine(built, row, bay);
    double halfIn = built.member("rail").depthIn() / 2;
    return rail.middleIn(alongIn) + halfIn * Math.hypot(1, rail.fallRatio());
  }

  /** Underside of the header at a place along the walk. */
  private double headerUnderIn(int bay, double alongIn) {
    HeaderPiece run = runOver(bay);
    double stretch = Math.hypot(1, run.fallRatio());
    double underIn = built.paired() ? -geometry.headers().depthIn() : -geometry.headers().notchIn();
    double onLineIn = (alongIn - run.seat().alongIn()) * stretch;
    return run.at(onLineIn, 0, 0).upIn() + underIn * stretch;
  }

  private HeaderPiece runOver(int bay) {
    for (HeaderPiece run : built.headerPieces().pieces(false)) {
      if (bay >= run.fromPost() && bay < run.toPost()) {
        return run;
      }
    }
    throw new IllegalStateException("no header over bay " + bay);
  }

  private Placed block(int row, int bay, double alongIn) {
    double gapIn = geometry.posts().breadthIn();
    double middleIn = row * geometry.plan().rowSpacingIn();
    double upIn = headerUnderIn(bay, alongIn) + size.thicknessIn() / 2;
    Shape shape =
        new Shape(
            "block",
            size.id(),
            size.thicknessIn(),
            size.widthIn(),
            tape.nearest(gapIn),
            0,
            ACROSS,
            EndCut.square(),
            EndCut.square(),
            List.of(),
            List.of());
    return new Placed(
        shape,
        new Place(
            new Point(alongIn, middleIn - gapIn / 2, upIn),
            new Point(alongIn, middleIn + gapIn / 2, upIn)));
  }
}
