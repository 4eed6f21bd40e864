package org.scantling.drawing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scantling.design.Geometry;
import org.scantling.design.Structure;
import org.scantling.design.TopLine;
import org.scantling.design.WayOfBuilding;
import org.scantling.shop.Piece;
import org.scantling.shop.Pieces;
import org.scantling.shop.Place;
import org.scantling.shop.SetOut;
import org.scantling.shop.Shape;

/**
 * What is drawn: the pieces as they are cut and the set-out as it is staked.
 *
 * @param frostIn depth of the frost, where the ground freezes
 * @param rockIn depth at which solid rock begins, where the site tells of any
 * @param machineIn width of the machine that passes, where one does
 */
record Subject(
    String title,
    Pieces pieces,
    SetOut setOut,
    Structure structure,
    OptionalDouble frostIn,
    OptionalDouble rockIn,
    OptionalDouble machineIn,
    DrawnLengths lengths) {

  /** One piece where it lies. */
  record Lying(String mark, Shape shape, Place place) {
    double middleAcrossIn() {
      return (place.first().acrossIn() + place.last().acrossIn()) / 2;
    }

    double alongIn() {
      return place.first().alongIn();
    }

    /** Its end nearer to the first post. */
    double fromAlongIn() {
      return Math.min(place.first().alongIn(), place.last().alongIn());
    }

    /** Its end nearer to the last post. */
    double toAlongIn() {
      return Math.max(place.first().alongIn(), place.last().alongIn());
    }

    /** True where it runs across the walk. */
    boolean across() {
      return place.first().acrossIn() != place.last().acrossIn();
    }
  }

  Geometry geometry() {
    return structure.geometry();
  }

  TopLine top() {
    return structure.top();
  }

  boolean onPiers() {
    return !structure.footings().kind().equals(WayOfBuilding.EMBEDDED);
  }

  /** True where concrete is round the posts, or under them. */
  boolean concrete() {
    return onPiers() || structure.footings().backfill().equals(WayOfBuilding.CONCRETE);
  }

  boolean inGravel() {
    return !concrete() && structure.footings().backfill().equals(WayOfBuilding.GRAVEL);
  }

  Stream<Lying> lying(String role) {
    return pieces.of(role).stream().flatMap(Subject::places);
  }

  private static Stream<Lying> places(Piece piece) {
    return piece.places().stream().map(place -> new Lying(piece.mark(), piece.shape(), place));
  }

  /** The stakes of a row: 0 for A, 1 for B. */
  List<SetOut.PostMark> row(int row) {
    int posts = setOut.posts().size() / 2;
    return setOut.posts().subList(row * posts, (row + 1) * posts);
  }

  /** Height of the level line over the datum. */
  double lineIn() {
    return setOut.ground().lineOverDatumIn();
  }

  /** The ground at a post over the datum. */
  double groundIn(SetOut.PostMark post) {
    return -top().slopeRatio() * post.alongIn() + top().rowIn(post.acrossIn() > 0 ? 1 : 0);
  }

  /** Fall of the ground from the first row to the second over their distance. */
  double acrossRatio() {
    return top().acrossIn() / rowSpacingIn();
  }

  double bottomIn(SetOut.PostMark post) {
    return lineIn() - post.bottomBelowLineIn();
  }

  double fallRatio() {
    return top().headerFallRatio();
  }

  double rowSpacingIn() {
    return geometry().plan().rowSpacingIn();
  }

  /** Highest corner of a piece over the datum. */
  static double topOf(List<ScenePoint> outline) {
    return outline.stream().mapToDouble(ScenePoint::upIn).max().orElseThrow();
  }

  static double lowOf(List<ScenePoint> outline) {
    return outline.stream().mapToDouble(ScenePoint::upIn).min().orElseThrow();
  }
}
