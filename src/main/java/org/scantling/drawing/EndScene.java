package org.scantling.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.scantling.shop.SetOut;

/** The walk from its first post, as one who is about to go through sees it. */
final class EndScene {
  private static final double WHEELS = 7;
  private static final double AXLE_IN = 7;
  private static final double WHEEL_IN = 18;
  private static final double BODY_IN = 24;
  private static final double SEAT_IN = 38;

  private final Subject subject;
  private final Scene scene = new Scene();
  private final double pxIn;
  private final double groundPx;

  private EndScene(Subject subject, double pxIn, Room room) {
    this.subject = subject;
    this.pxIn = pxIn;
    this.groundPx = room.groundPx();
  }

  static Scene of(Subject subject, double pxIn, Room room) {
    EndScene end = new EndScene(subject, pxIn, room);
    end.ground();
    end.machine();
    end.timber();
    Person.stand(end.scene, end.personIn(), end.groundIn(end.personIn()));
    new EndDimensions(subject, end.scene).add();
    return end.scene;
  }

  private double tailIn() {
    return subject.geometry().crossbeamTailIn() + groundPx * pxIn;
  }

  private double fromIn() {
    return -subject.rowSpacingIn() - tailIn();
  }

  /** The first post of each row, row B on the left. */
  private List<SetOut.PostMark> posts() {
    return List.of(subject.row(1).get(0), subject.row(0).get(0));
  }

  private void ground() {
    GroundScene ground =
        new GroundScene(
            subject, scene, posts().stream().map(post -> -post.acrossIn()).toList(), pxIn);
    double slope = slopeRatio();
    ground.line(fromIn(), tailIn(), slope);
    posts().forEach(post -> ground.hole(post, -post.acrossIn(), slope));
    subject
        .frostIn()
        .ifPresent(
            depthIn -> {
              ground.under(fromIn(), tailIn(), slope, depthIn, LineClass.FROST);
              scene.add(DepthWord.frost(subject, depthIn, spots(depthIn)));
            });
    subject
        .rockIn()
        .ifPresent(
            depthIn -> {
              ground.under(fromIn(), tailIn(), slope, depthIn, LineClass.HIDDEN);
              scene.add(DepthWord.rock(subject, depthIn, spots(depthIn)));
            });
  }

  private List<Drawn.Spot> spots(double depthIn) {
    ScenePoint middle = under(-subject.rowSpacingIn() / 2, depthIn);
    ScenePoint right = under(tailIn(), depthIn);
    ScenePoint left = under(fromIn(), depthIn);
    return List.of(
        new Drawn.Spot(middle, 0, -6, Anchor.MIDDLE),
        new Drawn.Spot(middle, 0, 16, Anchor.MIDDLE),
        new Drawn.Spot(right, 0, -6, Anchor.END),
        new Drawn.Spot(right, 0, 16, Anchor.END),
        new Drawn.Spot(left, 0, -6, Anchor.START),
        new Drawn.Spot(left, 0, 16, Anchor.START));
  }

  /** Fall of the ground toward the right, where row A stands. */
  private double slopeRatio() {
    return -subject.acrossRatio();
  }

  private ScenePoint under(double rightIn, double depthIn) {
    return new ScenePoint(rightIn, groundIn(rightIn) - depthIn);
  }

  private double groundIn(double rightIn) {
    return -slopeRatio() * rightIn;
  }

  /** In the middle of the way, or beside the walk where a machine fills it. */
  private double personIn() {
    double middleIn = -subject.rowSpacingIn() / 2;
    return subject.machineIn().isEmpty()
        ? middleIn
        : -subject.rowSpacingIn() - subject.geometry().crossbeamTailIn() / 2 - groundPx * pxIn / 3;
  }

  /** The machine by its width; how high it is nobody has said, so its outline is a sign for one. */
  private void machine() {
    subject
        .machineIn()
        .ifPresent(
            wideIn -> {
              double middleIn = -subject.rowSpacingIn() / 2;
              double wheelIn = wideIn / WHEELS;
              part(middleIn, wideIn / 5, BODY_IN, SEAT_IN);
              part(middleIn, wideIn / 2 - wheelIn / 2, AXLE_IN, BODY_IN);
              part(middleIn - wideIn / 2 + wheelIn / 2, wheelIn / 2, 0, WHEEL_IN);
              part(middleIn + wideIn / 2 - wheelIn / 2, wheelIn / 2, 0, WHEEL_IN);
            });
  }

  private double middleGroundIn() {
    return groundIn(-subject.rowSpacingIn() / 2);
  }

  private void part(double middleIn, double halfIn, double lowIn, double highIn) {
    scene.box(
        new ScenePoint(middleIn - halfIn, middleGroundIn() + lowIn),
        new ScenePoint(middleIn + halfIn, middleGroundIn() + highIn),
        Tone.PERSON,
        LineClass.HIDDEN);
  }

  /** From the far side to the near. */
  private void timber() {
    first("post").forEach(this::onItsSide);
    braces(false).forEach(this::edgeOn);
    braces(true).forEach(this::onItsSide);
    onItsSide(crossbeam());
    headersAt(subject, 0).toList().forEach(each -> header(subject, scene, each, 0));
  }

  /** What stands at the first posts. */
  private Stream<Subject.Lying> first(String role) {
    return subject.lying(role).filter(each -> each.alongIn() == 0);
  }

  private Stream<Subject.Lying> braces(boolean across) {
    double postIn = subject.geometry().posts().breadthIn();
    return subject
        .lying("brace")
        .filter(each -> each.across() == across)
        .filter(each -> Math.abs(each.alongIn()) < 2 * postIn);
  }

  /** The one nearest to the first posts. */
  private Subject.Lying crossbeam() {
    return nearest(subject);
  }

  static Subject.Lying nearest(Subject subject) {
    return subject
        .lying("crossbeam")
        .min(Comparator.comparingDouble(each -> Math.abs(each.alongIn())))
        .orElseThrow();
  }

  private void onItsSide(Subject.Lying lying) {
    scene.add(
        new Drawn.Outline(
            PieceOutline.inElevation(Projection.END, lying.shape(), lying.place(), 0),
            Tone.TIMBER,
            LineClass.VISIBLE,
            lying.mark()));
  }

  /** A brace along the walk, seen along its thickness. */
  private void edgeOn(Subject.Lying brace) {
    List<ScenePoint> flat =
        PieceOutline.inElevation(Projection.SIDE, brace.shape(), brace.place(), 0);
    double halfIn = brace.shape().breadthIn() / 2;
    double middleIn = -brace.middleAcrossIn();
    scene.add(
        new Drawn.Outline(
            Scene.corners(
                new ScenePoint(middleIn - halfIn, Subject.lowOf(flat)),
                new ScenePoint(middleIn + halfIn, Subject.topOf(flat))),
            Tone.TIMBER,
            LineClass.VISIBLE,
            brace.mark()));
  }

  /** The headers over a post, or over any place along the walk. */
  static Stream<Subject.Lying> headersAt(Subject subject, double alongIn) {
    return subject
        .lying("header")
        .filter(each -> each.fromAlongIn() < alongIn && each.toAlongIn() > alongIn);
  }

  /** Cut across at a place along the walk. */
  static void header(Subject subject, Scene scene, Subject.Lying header, double alongIn) {
    ScenePoint first = Projection.SIDE.of(header.place().first());
    ScenePoint last = Projection.SIDE.of(header.place().last());
    double share = (alongIn - first.rightIn()) / (last.rightIn() - first.rightIn());
    ScenePoint middle = new ScenePoint(-header.middleAcrossIn(), first.towards(last, share).upIn());
    double broadIn = header.shape().breadthIn() / 2;
    double deepIn = header.shape().depthIn() / 2 * Math.hypot(1, subject.fallRatio());
    scene.add(
        new Drawn.EndGrain(
            Scene.corners(middle.plus(-broadIn, -deepIn), middle.plus(broadIn, deepIn)),
            Tone.TIMBER,
            LineClass.CUT,
            header.mark()));
  }
}
