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
    double highIn = groundIn(high());
    double upIn =
        highIn
            + Math.max(
                Person.HEIGHT_IN + HAT_IN,
                Math.min(
                    Person.HEIGHT_IN + CLEAR_RATIO * (headroomIn - Person.HEIGHT_IN),
                    underBracesIn() - highIn - HAT_IN));
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

  private double groundIn(SetOut.PostMark post) {
    return subject.groundIn(post);
  }

  /** The post that stands on the higher ground: that of row A where both stand alike. */
  private SetOut.PostMark high() {
    return groundIn(postB) > groundIn(postA) ? postB : postA;
  }

  /**
   * On the side of the lower row the hole and the post, on the other the headroom, which is least
   * there; all of it on the right, or over the lower row.
   */
  private void heights() {
    boolean mirrored = high() == postB;
    SetOut.PostMark low = mirrored ? postA : postB;
    Side lowSide = mirrored ? Side.RIGHT : Side.LEFT;
    Side highSide = mirrored ? Side.LEFT : Side.RIGHT;
    double topIn = subject.lineIn() + low.topOverLineIn();
    List<ScenePoint> beam = outline();
    scene.add(
        new Drawn.Dimension(
            lowSide,
            0,
            List.of(
                beside(low, subject.bottomIn(low)),
                beside(low, groundIn(low)),
                new ScenePoint(mirrored ? rightIn(beam) : leftIn(beam), topIn)),
            List.of(
                lengths.of(low.name() + " dig", low.digIn()),
                lengths.of(low.name() + " top", topIn - groundIn(low)))));
    double headroomIn = subject.top().headroomIn();
    double seatIn = subject.geometry().seatBreadthIn() / 2;
    scene.add(
        new Drawn.Dimension(
            highSide,
            0,
            List.of(
                beside(high(), groundIn(high())),
                new ScenePoint(
                    -high().acrossIn() + outward(high()) * seatIn, groundIn(high()) + headroomIn)),
            List.of(told("end.headroom", "headroom", headroomIn))));
    boolean level = subject.top().acrossIn() == 0;
    double highIn = Subject.topOf(beam);
    SetOut.PostMark from = level ? postA : low;
    scene.add(
        new Drawn.Dimension(
            level ? highSide : lowSide,
            1,
            List.of(
                beside(from, groundIn(from)),
                new ScenePoint(outward(from) > 0 ? rightIn(beam) : leftIn(beam), highIn)),
            List.of(lengths.of("over-all height", highIn - groundIn(from)))));
  }

  /** To the right of row A, to the left of row B. */
  private static int outward(SetOut.PostMark post) {
    return post.acrossIn() > 0 ? -1 : 1;
  }

  /** The outer edge of a hole. */
  private ScenePoint beside(SetOut.PostMark post, double upIn) {
    double holeIn = subject.setOut().ground().holeIn() / 2;
    return new ScenePoint(-post.acrossIn() + outward(post) * holeIn, upIn);
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
