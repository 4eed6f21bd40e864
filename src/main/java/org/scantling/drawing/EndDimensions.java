package org.scantling.drawing;

import java.util.List;
import org.scantling.sayings.Sayings;
import org.scantling.shop.SetOut;

/** What is measured across the walk. */
final class EndDimensions {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double CLEAR_RATIO = 0.3;
  private static final double HAT_IN = 2;
  private static final double MACHINE_UP_IN = 46;

  private final Subject subject;
  private final DrawnLengths lengths;
  private final Scene scene;
  private final SetOut.PostMark postA;
  private final SetOut.PostMark postB;

  EndDimensions(Subject subject, Scene scene) {
    this.subject = subject;
    this.lengths = subject.lengths();
    this.scene = scene;
    this.postA = subject.row(0).get(0);
    this.postB = subject.row(1).get(0);
  }

  void add() {
    clearWidth();
    rows();
    holes();
    heights();
    crossbeam();
    machine();
    name(postA);
    name(postB);
  }

  private double halfPostIn() {
    return subject.geometry().posts().breadthIn() / 2;
  }

  /** From face to face, above the head of the person. */
  private void clearWidth() {
    double headroomIn = subject.top().headroomIn();
    double upIn =
        Math.max(
            Person.HEIGHT_IN + HAT_IN,
            Math.min(
                Person.HEIGHT_IN + CLEAR_RATIO * (headroomIn - Person.HEIGHT_IN),
                underBracesIn() - HAT_IN));
    double acrossIn = -subject.rowSpacingIn();
    scene.add(
        new Drawn.Inner(
            new ScenePoint(acrossIn + halfPostIn(), upIn),
            new ScenePoint(-halfPostIn(), upIn),
            told("end.clear", "clear width", clearIn())));
  }

  /** A figure with a word that says what it is. */
  private Drawn.Figure told(String saying, String of, double lengthIn) {
    return new Drawn.Figure(SAYINGS.say(saying, "length", lengths.figure(lengthIn)), of, lengthIn);
  }

  /** Where the braces across the walk leave their posts. */
  private double underBracesIn() {
    return subject
        .lying("brace")
        .filter(Subject.Lying::across)
        .mapToDouble(
            each ->
                2 * halfPostIn()
                    + Subject.lowOf(
                        PieceOutline.inElevation(Projection.END, each.shape(), each.place(), 0)))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** As the spacers between the rows are cut. */
  private double clearIn() {
    List<SetOut.Spacer> spacers = subject.setOut().spacers();
    return spacers.get(spacers.size() - 1).lengthIn();
  }

  private void rows() {
    scene.add(
        new Drawn.Dimension(
            Side.BELOW,
            0,
            List.of(
                new ScenePoint(-postB.acrossIn(), subject.bottomIn(postB)),
                new ScenePoint(-postA.acrossIn(), subject.bottomIn(postA))),
            List.of(lengths.of(postA.name() + " " + postB.name(), postB.acrossIn()))));
  }

  private void holes() {
    double holeIn = subject.setOut().ground().holeIn();
    double middleIn = -postB.acrossIn();
    scene.add(
        new Drawn.Dimension(
            Side.BELOW,
            1,
            List.of(
                new ScenePoint(middleIn - holeIn / 2, subject.bottomIn(postB)),
                new ScenePoint(middleIn + holeIn / 2, subject.bottomIn(postB))),
            List.of(lengths.of("hole width", holeIn))));
  }

  /** On the left the hole and the post, on the right the headroom and all of it. */
  private void heights() {
    double holeIn = subject.setOut().ground().holeIn() / 2;
    double leftIn = -postB.acrossIn();
    double topIn = subject.lineIn() + postB.topOverLineIn();
    scene.add(
        new Drawn.Dimension(
            Side.LEFT,
            0,
            List.of(
                new ScenePoint(leftIn - holeIn, subject.bottomIn(postB)),
                new ScenePoint(leftIn - holeIn, 0),
                new ScenePoint(leftIn(outline()), topIn)),
            List.of(
                lengths.of(postB.name() + " dig", postB.digIn()),
                lengths.of(postB.name() + " top", topIn))));
    double headroomIn = subject.top().headroomIn();
    ScenePoint seat = new ScenePoint(subject.geometry().seatBreadthIn() / 2, headroomIn);
    scene.add(
        new Drawn.Dimension(
            Side.RIGHT,
            0,
            List.of(new ScenePoint(holeIn, 0), seat),
            List.of(told("end.headroom", "headroom", headroomIn))));
    List<ScenePoint> beam = outline();
    double highIn = Subject.topOf(beam);
    scene.add(
        new Drawn.Dimension(
            Side.RIGHT,
            1,
            List.of(new ScenePoint(holeIn, 0), new ScenePoint(rightIn(beam), highIn)),
            List.of(lengths.of("over-all height", highIn))));
  }

  private List<ScenePoint> outline() {
    Subject.Lying beam = EndScene.nearest(subject);
    return PieceOutline.inElevation(Projection.END, beam.shape(), beam.place(), 0);
  }

  private static double rightIn(List<ScenePoint> outline) {
    return outline.stream().mapToDouble(ScenePoint::rightIn).max().orElseThrow();
  }

  private static double leftIn(List<ScenePoint> outline) {
    return outline.stream().mapToDouble(ScenePoint::rightIn).min().orElseThrow();
  }

  private void crossbeam() {
    List<ScenePoint> beam = outline();
    Subject.Lying lying = EndScene.nearest(subject);
    double highIn = Subject.topOf(beam);
    double lengthIn = lying.shape().lengthIn();
    scene.add(
        new Drawn.Dimension(
            Side.ABOVE,
            0,
            List.of(new ScenePoint(leftIn(beam), highIn), new ScenePoint(rightIn(beam), highIn)),
            List.of(
                new Drawn.Figure(
                    lying.mark() + "  " + lengths.figure(lengthIn),
                    lying.mark() + " length",
                    lengthIn))));
  }

  /** Low over its outline, where there is nothing else. */
  private void machine() {
    subject
        .machineIn()
        .ifPresent(
            wideIn -> {
              double middleIn = -subject.rowSpacingIn() / 2;
              scene.add(
                  new Drawn.Inner(
                      new ScenePoint(middleIn - wideIn / 2, MACHINE_UP_IN),
                      new ScenePoint(middleIn + wideIn / 2, MACHINE_UP_IN),
                      told("end.machine-width", "machine width", wideIn)));
            });
  }

  private void name(SetOut.PostMark post) {
    PostName.add(scene, post, new ScenePoint(-post.acrossIn(), subject.bottomIn(post)));
  }
}
