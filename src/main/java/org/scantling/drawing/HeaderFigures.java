package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.scantling.shop.Bore;
import org.scantling.shop.Recess;

/** How far holes and notches of headers at a post lie from ends and edges. */
final class HeaderFigures {
  private static final double HAIR_IN = 1e-6;

  private final Subject subject;
  private final Scene scene;
  private final List<HeaderEnd> ends;
  private final ToDoubleBiFunction<HeaderEnd, Double> along;

  /**
   * @param along where a distance from the first end of a piece comes to lie in the drawing
   */
  HeaderFigures(
      Subject subject,
      Scene scene,
      List<HeaderEnd> ends,
      ToDoubleBiFunction<HeaderEnd, Double> along) {
    this.subject = subject;
    this.scene = scene;
    this.ends = ends;
    this.along = along;
  }

  void add() {
    for (HeaderEnd each : ends) {
      holes(each, "side", Side.BELOW);
      holes(each, "top", Side.ABOVE);
      notch(each);
    }
    edges(ends.get(0));
  }

  private double reachIn() {
    return subject.geometry().posts().breadthIn() / 2 + 1;
  }

  private List<Bore> bores(HeaderEnd end, String face) {
    return end.bores(reachIn()).stream().filter(each -> each.face().equals(face)).toList();
  }

  private Drawn.Figure figure(HeaderEnd end, String of, double lengthIn) {
    return subject.lengths().of("detail " + end.lying().mark() + " " + of, lengthIn);
  }

  private double halfIn(HeaderEnd end) {
    return end.lying().shape().depthIn() / 2;
  }

  /** The upper row of bolts, or all lag screws, from the end on. */
  private void holes(HeaderEnd end, String face, Side side) {
    List<Bore> bores = bores(end, face);
    double upperIn = bores.stream().mapToDouble(Bore::offIn).max().orElse(0);
    List<Bore> row =
        bores.stream()
            .filter(each -> face.equals("top") || each.offIn() > upperIn - HAIR_IN)
            .sorted(Comparator.comparingDouble(each -> end.fromEndIn(each.atIn())))
            .toList();
    if (row.isEmpty()) {
      return;
    }
    double upIn = face.equals("top") ? halfIn(end) : upperIn;
    double endUpIn = side == Side.ABOVE ? halfIn(end) : -halfIn(end);
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    stops.add(new ScenePoint(along.applyAsDouble(end, end.endAtIn()), endUpIn));
    double beforeIn = 0;
    for (Bore each : row) {
      double fromEndIn = end.fromEndIn(each.atIn());
      String of = "bore " + end.indexOf(each) + " " + end.word();
      figures.add(
          beforeIn == 0
              ? figure(end, of, fromEndIn)
              : figure(end, of + " after " + end.indexOf(row.get(0)), fromEndIn - beforeIn));
      stops.add(new ScenePoint(along.applyAsDouble(end, each.atIn()), upIn));
      beforeIn = fromEndIn;
    }
    scene.add(new Drawn.Dimension(side, 0, stops, figures));
  }

  private void notch(HeaderEnd end) {
    end.notch()
        .ifPresent(
            place -> {
              Recess notch = end.lying().shape().recesses().get(place);
              double upIn = -halfIn(end) + notch.depthIn();
              String of = "recess " + place + " ";
              double nearIn = end.atFirst() ? notch.fromIn() : notch.toIn();
              double farIn = end.atFirst() ? notch.toIn() : notch.fromIn();
              List<ScenePoint> stops = new ArrayList<>();
              List<Drawn.Figure> figures = new ArrayList<>();
              double fromEndIn = end.fromEndIn(nearIn);
              if (fromEndIn > HAIR_IN) {
                stops.add(new ScenePoint(along.applyAsDouble(end, end.endAtIn()), -halfIn(end)));
                figures.add(figure(end, of + "end " + end.word(), fromEndIn));
              }
              stops.add(new ScenePoint(along.applyAsDouble(end, nearIn), upIn));
              stops.add(new ScenePoint(along.applyAsDouble(end, farIn), upIn));
              figures.add(figure(end, of + "width", notch.widthIn()));
              scene.add(new Drawn.Dimension(Side.BELOW, 0, stops, figures));
            });
  }

  /** From edge to edge, on the side that the end is on. */
  private void edges(HeaderEnd end) {
    double halfIn = halfIn(end);
    double edgeAtIn = along.applyAsDouble(end, end.endAtIn());
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    stops.add(new ScenePoint(edgeAtIn, -halfIn));
    if (end.notch().isPresent()) {
      int place = end.notch().getAsInt();
      Recess notch = end.lying().shape().recesses().get(place);
      double atIn = along.applyAsDouble(end, end.atFirst() ? notch.fromIn() : notch.toIn());
      stops.add(new ScenePoint(atIn, -halfIn + notch.depthIn()));
      figures.add(figure(end, "recess " + place + " depth", notch.depthIn()));
      figures.add(figure(end, "recess " + place + " left", 2 * halfIn - notch.depthIn()));
    } else {
      bolts(end, stops, figures);
    }
    stops.add(new ScenePoint(edgeAtIn, halfIn));
    Side side = end.postAtIn() > end.endAtIn() ? Side.LEFT : Side.RIGHT;
    scene.add(new Drawn.Dimension(ends.size() > 1 ? Side.LEFT : side, 0, stops, figures));
  }

  /** The column nearest to the end, from the lower edge up. */
  private void bolts(HeaderEnd end, List<ScenePoint> stops, List<Drawn.Figure> figures) {
    List<Bore> bores =
        bores(end, "side").stream()
            .sorted(
                Comparator.comparingDouble(Bore::offIn)
                    .thenComparingDouble(each -> end.fromEndIn(each.atIn())))
            .toList();
    double halfIn = halfIn(end);
    double beforeIn = -halfIn;
    String before = "bottom";
    for (Bore each : bores) {
      if (each.offIn() > beforeIn + HAIR_IN) {
        String of = "bore " + end.indexOf(each) + " over " + before;
        figures.add(figure(end, of, each.offIn() - beforeIn));
        stops.add(new ScenePoint(along.applyAsDouble(end, each.atIn()), each.offIn()));
        beforeIn = each.offIn();
        before = Integer.toString(end.indexOf(each));
      }
    }
    figures.add(
        before.equals("bottom")
            ? figure(end, "depth", 2 * halfIn)
            : figure(end, "bore " + before + " under top", halfIn - beforeIn));
  }
}
