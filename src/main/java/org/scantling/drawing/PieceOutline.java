package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.scantling.shop.EndCut;
import org.scantling.shop.Place;
import org.scantling.shop.Recess;
import org.scantling.shop.Shape;

/**
 * The outline of a finished piece seen on its side: its ends as they are cut, its underside with
 * the notches.
 */
final class PieceOutline {
  static final String UNDERSIDE = "underside";

  private final Shape shape;
  private final ScenePoint first;
  private final double lengthIn;
  private final double halfIn;
  private final double alongRightIn;
  private final double alongUpIn;
  private final double normalRightIn;
  private final double normalUpIn;
  private final double fallRatio;

  /**
   * @param fallRatio of the headers, which posts and pickets are cut to
   */
  private PieceOutline(
      Shape shape, ScenePoint first, ScenePoint last, double seenIn, double fallRatio) {
    this.shape = shape;
    this.first = first;
    this.lengthIn = Math.hypot(last.rightIn() - first.rightIn(), last.upIn() - first.upIn());
    this.halfIn = seenIn / 2;
    this.alongRightIn = (last.rightIn() - first.rightIn()) / lengthIn;
    this.alongUpIn = (last.upIn() - first.upIn()) / lengthIn;
    // The upper side is the upper one whichever way the piece runs; of an upright, the right one.
    int turn = alongRightIn >= 0 ? 1 : -1;
    this.normalRightIn = upright() ? 1 : -turn * alongUpIn;
    this.normalUpIn = upright() ? 0 : turn * alongRightIn;
    this.fallRatio = fallRatio;
  }

  /** In an elevation, with its ends and notches. */
  static List<ScenePoint> inElevation(Projection from, Shape shape, Place place, double fallRatio) {
    return seen(from, shape, place, fallRatio).outline();
  }

  /** How broad it looks there. */
  static double seenIn(Shape shape) {
    return shape.role().equals("picket") ? shape.breadthIn() : shape.depthIn();
  }

  /** The same laid down, its first end at the left, the middle of it at the height 0. */
  static List<ScenePoint> laidFlat(Projection from, Shape shape, Place place, double fallRatio) {
    PieceOutline piece = seen(from, shape, place, fallRatio);
    return piece.outline().stream().map(piece::flat).toList();
  }

  /** How the frame of the structure comes to lie when the piece is laid down so. */
  static UnaryOperator<ScenePoint> laying(Projection from, Shape shape, Place place) {
    return seen(from, shape, place, 0)::flat;
  }

  private static PieceOutline seen(Projection from, Shape shape, Place place, double fallRatio) {
    return new PieceOutline(
        shape, from.of(place.first()), from.of(place.last()), seenIn(shape), fallRatio);
  }

  private ScenePoint flat(ScenePoint point) {
    double rightIn = point.rightIn() - first.rightIn();
    double upIn = point.upIn() - first.upIn();
    return new ScenePoint(
        rightIn * alongRightIn + upIn * alongUpIn, rightIn * normalRightIn + upIn * normalUpIn);
  }

  /** From above, its ends square. */
  static List<ScenePoint> inPlan(Shape shape, Place place) {
    PieceOutline piece =
        new PieceOutline(
            shape,
            Projection.PLAN.of(place.first()),
            Projection.PLAN.of(place.last()),
            shape.breadthIn(),
            0);
    return List.of(
        piece.at(0, -piece.halfIn),
        piece.at(piece.lengthIn, -piece.halfIn),
        piece.at(piece.lengthIn, piece.halfIn),
        piece.at(0, piece.halfIn));
  }

  private boolean upright() {
    return Math.abs(alongRightIn) < Math.abs(alongUpIn) / 1000;
  }

  private ScenePoint at(double alongIn, double overIn) {
    return first.plus(
        alongIn * alongRightIn + overIn * normalRightIn, alongIn * alongUpIn + overIn * normalUpIn);
  }

  private List<ScenePoint> outline() {
    List<ScenePoint> outline = new ArrayList<>(end(shape.first(), true));
    List<ScenePoint> last = new ArrayList<>(end(shape.last(), false));
    Collections.reverse(outline);
    outline.addAll(last);
    outline.addAll(underside());
    return outline;
  }

  /** From the upper edge down to the lower one. */
  private List<ScenePoint> end(EndCut cut, boolean atFirst) {
    if (cut instanceof EndCut.Shaped shaped) {
      return shaped.outline().stream()
          .map(each -> at(fromEnd(each.backIn(), atFirst), halfIn - each.downIn()))
          .toList();
    }
    double upperBackIn = 0;
    double lowerBackIn = 0;
    if (cut instanceof EndCut.Sloping sloping) {
      boolean upperIsLong = upperIsLong(atFirst);
      double backIn = setBackIn(sloping);
      upperBackIn = upperIsLong ? 0 : backIn;
      lowerBackIn = upperIsLong ? backIn : 0;
    }
    return List.of(
        at(fromEnd(upperBackIn, atFirst), halfIn), at(fromEnd(lowerBackIn, atFirst), -halfIn));
  }

  private double fromEnd(double backIn, boolean atFirst) {
    return atFirst ? backIn : lengthIn - backIn;
  }

  /** By the same slope as the cut, not rounded to the tape, so that neighbors meet. */
  private double setBackIn(EndCut.Sloping cut) {
    return switch (shape.role()) {
      case "post", "picket" -> 2 * halfIn * Math.abs(fallRatio);
      case "header", "rail" -> 2 * halfIn * Math.abs(alongUpIn / alongRightIn);
      default -> cut.setBackIn();
    };
  }

  /**
   * Which edge a sloping cut leaves the longer. A brace is long on the side away from its corner,
   * which is the lower one; of an upright, the upper side is the right one.
   */
  private boolean upperIsLong(boolean atFirst) {
    return switch (shape.role()) {
      case "post" -> fallRatio < 0;
      case "picket" -> atFirst == (fallRatio > 0);
      case "header", "rail" -> atFirst == (alongUpIn < 0);
      default -> false;
    };
  }

  /** The corners of the notches, from the last end on. */
  private List<ScenePoint> underside() {
    List<ScenePoint> corners = new ArrayList<>();
    for (Recess each : shape.recesses()) {
      if (each.face().equals(UNDERSIDE)) {
        double fromIn = Math.max(0, each.fromIn());
        double toIn = Math.min(lengthIn, each.toIn());
        corners.add(0, at(fromIn, -halfIn));
        corners.add(0, at(fromIn, -halfIn + each.depthIn()));
        corners.add(0, at(toIn, -halfIn + each.depthIn()));
        corners.add(0, at(toIn, -halfIn));
      }
    }
    return corners;
  }
}
