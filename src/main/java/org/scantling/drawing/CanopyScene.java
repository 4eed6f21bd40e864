package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.scantling.shop.SetOut;
import org.scantling.shop.Shape;

/** The top from above: headers along the rows, crossbeams over them, posts beneath. */
final class CanopyScene {
  private static final int CROSSBEAM_MARKS = 2;
  private static final double THIN_UNDER_PX = 3;

  private final Subject subject;
  private final DrawnLengths lengths;
  private final Scene scene = new Scene();

  private final double pxIn;

  private CanopyScene(Subject subject, double pxIn) {
    this.subject = subject;
    this.pxIn = pxIn;
    this.lengths = subject.lengths();
  }

  static Scene of(Subject subject, double pxIn) {
    CanopyScene canopy = new CanopyScene(subject, pxIn);
    canopy.draw("header");
    canopy.draw("blocking");
    canopy.draw("crossbeam");
    canopy.posts();
    canopy.running();
    canopy.lengths();
    canopy.marks();
    return canopy.scene;
  }

  private void draw(String role) {
    subject
        .lying(role)
        .forEach(
            each ->
                scene.add(
                    new Drawn.Outline(
                        PieceOutline.inPlan(each.shape(), each.place()),
                        Tone.TIMBER,
                        edge(each.shape()),
                        each.mark())));
  }

  /** Of timber that is hardly broader than its edges only thin ones are drawn. */
  private LineClass edge(Shape shape) {
    return shape.breadthIn() < THIN_UNDER_PX * pxIn ? LineClass.THIN : LineClass.VISIBLE;
  }

  /** Beneath all of it, so only by their hidden edges. */
  private void posts() {
    double halfIn = subject.geometry().posts().breadthIn() / 2;
    for (SetOut.PostMark post : subject.setOut().posts()) {
      ScenePoint middle = new ScenePoint(post.alongIn(), post.acrossIn());
      scene.box(
          middle.plus(-halfIn, -halfIn), middle.plus(halfIn, halfIn), Tone.NONE, LineClass.HIDDEN);
    }
  }

  /** The marks of the crossbeams on the headers, as the set-out has them. */
  static SetOut.Running marks(Subject subject) {
    return subject.setOut().running().get(CROSSBEAM_MARKS);
  }

  private void running() {
    SetOut.Running marks = marks(subject);
    double stretch = subject.top().stretchRatio();
    double tipIn = -subject.geometry().crossbeamTailIn();
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    List<Double> atIn = marks.atIn();
    for (int i = 0; i < atIn.size(); i++) {
      stops.add(new ScenePoint((marks.fromIn() + atIn.get(i)) / stretch, tipIn));
      figures.add(lengths.of("crossbeam mark " + (i + 1), atIn.get(i)));
    }
    scene.add(new Drawn.Running(Side.BELOW, 0, stops, figures));
  }

  private void lengths() {
    Shape crossbeam = subject.pieces().of("crossbeam").get(0).shape();
    double tailIn = subject.geometry().crossbeamTailIn();
    double toIn = subject.geometry().lengthIn() + subject.geometry().headerTailIn();
    double rowIn = subject.row(1).get(0).acrossIn();
    scene.add(
        new Drawn.Dimension(
            Side.RIGHT,
            0,
            List.of(
                new ScenePoint(toIn, -tailIn),
                new ScenePoint(toIn, subject.rowSpacingIn() + tailIn)),
            List.of(lengths.of("crossbeam length", crossbeam.lengthIn()))));
    scene.add(
        new Drawn.Dimension(
            Side.LEFT,
            0,
            List.of(
                new ScenePoint(-subject.geometry().headerTailIn(), 0),
                new ScenePoint(-subject.geometry().headerTailIn(), rowIn)),
            List.of(lengths.of("A1 B1", rowIn))));
  }

  /** Headers at their ends, crossbeams over their far tips where not all are alike. */
  private void marks() {
    subject
        .lying("crossbeam")
        .filter(each -> !each.mark().equals(commonest()))
        .forEach(each -> mark(each, farIn(), -6, Anchor.MIDDLE));
    Map<Double, Subject.Lying> first = new TreeMap<>();
    subject
        .lying("header")
        .sorted(Comparator.comparingDouble(CanopyScene::leftIn).reversed())
        .forEach(each -> first.put(each.middleAcrossIn(), each));
    first.values().forEach(this::headerMark);
  }

  private void headerMark(Subject.Lying header) {
    ScenePoint at = new ScenePoint(leftIn(header), header.middleAcrossIn());
    List<Drawn.Spot> spots = new ArrayList<>();
    for (double downPx : new double[] {4, 12, -4, 16, -8}) {
      spots.add(new Drawn.Spot(at, -6, downPx, Anchor.END));
    }
    scene.add(new Drawn.Note(header.mark(), Lettering.MARK, spots));
  }

  private double farIn() {
    return subject.rowSpacingIn() + subject.geometry().crossbeamTailIn();
  }

  private String commonest() {
    return subject.pieces().of("crossbeam").stream()
        .max(Comparator.comparingInt(each -> each.count()))
        .orElseThrow()
        .mark();
  }

  private void mark(Subject.Lying lying, double acrossIn, double downPx, Anchor anchor) {
    scene.add(
        new Drawn.Note(
            lying.mark(),
            Lettering.MARK,
            List.of(new Drawn.Spot(new ScenePoint(lying.alongIn(), acrossIn), 0, downPx, anchor))));
  }

  private static double leftIn(Subject.Lying header) {
    return Math.min(header.place().first().alongIn(), header.place().last().alongIn());
  }
}
