package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.scantling.shop.Bore;
import org.scantling.shop.SetOut;

/**
 * The walk from its side, from outside row A: what stands in that row, and the ground cut there.
 */
final class SideScene {
  private static final double BOLT_PX = 1.6;

  private final Subject subject;
  private final Scene scene = new Scene();
  private final Growth growth;
  private final double pxIn;
  private final double beforePx;
  private final double groundPx;

  private SideScene(Subject subject, Growth growth, double pxIn, double beforePx, Room room) {
    this.subject = subject;
    this.growth = growth;
    this.pxIn = pxIn;
    this.beforePx = beforePx;
    this.groundPx = room.groundPx();
  }

  /** With its dimensions and marks. */
  static Scene of(Subject subject, double pxIn, Room room) {
    SideScene side = new SideScene(subject, Growth.none(), pxIn, room.groundPx(), room);
    side.ground(side.fromIn());
    side.timber();
    new SideDimensions(subject, side.scene).add();
    side.depthWords();
    return side.scene;
  }

  /**
   * Without dimensions, what has grown drawn heavier; the ground begins at the first post.
   *
   * @param beforePx frost line before the first header
   */
  static Scene beside(Subject subject, Growth growth, double pxIn, double beforePx, Room room) {
    SideScene side = new SideScene(subject, growth, pxIn, beforePx, room);
    side.ground(0);
    side.timber();
    side.depthWords();
    return side.scene;
  }

  private double fromIn() {
    return -subject.geometry().headerTailIn() - beforePx * pxIn;
  }

  private double toIn() {
    return subject.geometry().lengthIn() + subject.geometry().headerTailIn() + groundPx * pxIn;
  }

  /**
   * @param startsIn where the line of the ground begins
   */
  private void ground(double startsIn) {
    double slope = subject.top().slopeRatio();
    List<SetOut.PostMark> row = subject.row(0);
    GroundScene ground =
        new GroundScene(subject, scene, row.stream().map(SetOut.PostMark::alongIn).toList(), pxIn);
    ground.line(startsIn, toIn(), slope);
    row.forEach(post -> ground.hole(post, post.alongIn(), slope));
    subject
        .frostIn()
        .ifPresent(depthIn -> ground.under(fromIn(), toIn(), slope, depthIn, LineClass.FROST));
    subject
        .rockIn()
        .ifPresent(depthIn -> ground.under(fromIn(), toIn(), slope, depthIn, LineClass.HIDDEN));
  }

  /** The words at the frost line and the rock: at an end, where both are drawn in any case. */
  private void depthWords() {
    subject
        .frostIn()
        .ifPresent(depthIn -> scene.add(DepthWord.frost(subject, depthIn, spots(depthIn))));
    subject
        .rockIn()
        .ifPresent(depthIn -> scene.add(DepthWord.rock(subject, depthIn, spots(depthIn))));
  }

  private List<Drawn.Spot> spots(double depthIn) {
    double slope = subject.top().slopeRatio();
    List<Drawn.Spot> spots = new ArrayList<>();
    for (double at : List.of(toIn(), fromIn())) {
      ScenePoint end = new ScenePoint(at, -slope * at - depthIn);
      Anchor anchor = at > 0 ? Anchor.END : Anchor.START;
      spots.add(new Drawn.Spot(end, 0, -6, anchor));
      spots.add(new Drawn.Spot(end, 0, 16, anchor));
      spots.add(new Drawn.Spot(end, 0, -6 - Math.abs(slope) * groundPx, anchor));
      spots.add(new Drawn.Spot(end, 0, 16 + Math.abs(slope) * groundPx, anchor));
    }
    return spots;
  }

  /** From the middle of the walk outwards. */
  private void timber() {
    inRow("brace", each -> each.across()).forEach(this::acrossWalk);
    inRow("brace", each -> !each.across() && !outside(each)).forEach(this::onItsSide);
    inRow("rail", each -> true).forEach(this::onItsSide);
    inRow("picket", each -> true).forEach(this::onItsSide);
    inRow("post", each -> true).forEach(this::onItsSide);
    outerHeaders().forEach(this::onItsSide);
    bolts();
    inRow("blocking", each -> true).forEach(this::onItsSide);
    inRow("brace", each -> !each.across() && outside(each)).forEach(this::onItsSide);
    subject.lying("crossbeam").forEach(this::crossbeamEnd);
  }

  private Stream<Subject.Lying> inRow(String role, Predicate<Subject.Lying> which) {
    return subject
        .lying(role)
        .filter(each -> each.place().first().acrossIn() < subject.rowSpacingIn() / 2)
        .filter(which);
  }

  private static boolean outside(Subject.Lying lying) {
    return lying.place().first().acrossIn() < 0;
  }

  /** Of a pair, the board that is seen from outside. */
  private Stream<Subject.Lying> outerHeaders() {
    return subject.lying("header").filter(each -> each.middleAcrossIn() <= outermostIn());
  }

  private double outermostIn() {
    return subject.lying("header").mapToDouble(Subject.Lying::middleAcrossIn).min().orElseThrow()
        + 1e-6;
  }

  private void onItsSide(Subject.Lying lying) {
    draw(
        lying,
        PieceOutline.inElevation(
            Projection.SIDE, lying.shape(), lying.place(), subject.fallRatio()));
  }

  private void draw(Subject.Lying lying, List<ScenePoint> outline) {
    String role = lying.shape().role();
    scene.add(new Drawn.Outline(outline, growth.tone(role), growth.line(role), lying.mark()));
  }

  /** A brace across the walk, seen along its thickness. */
  private void acrossWalk(Subject.Lying brace) {
    List<ScenePoint> flat =
        PieceOutline.inElevation(Projection.END, brace.shape(), brace.place(), 0);
    double halfIn = brace.shape().breadthIn() / 2;
    draw(
        brace,
        Scene.corners(
            new ScenePoint(brace.alongIn() - halfIn, Subject.lowOf(flat)),
            new ScenePoint(brace.alongIn() + halfIn, Subject.topOf(flat))));
  }

  /** Leaning with the headers, square to them. */
  private void crossbeamEnd(Subject.Lying crossbeam) {
    ScenePoint middle = Projection.SIDE.of(crossbeam.place().first());
    double stretch = Math.hypot(1, subject.fallRatio());
    double cosine = 1 / stretch;
    double sine = -subject.fallRatio() / stretch;
    double broadIn = crossbeam.shape().breadthIn() / 2;
    double deepIn = crossbeam.shape().depthIn() / 2;
    List<ScenePoint> corners = new ArrayList<>();
    for (int[] corner : new int[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
      double besideIn = corner[0] * broadIn;
      double overIn = corner[1] * deepIn;
      corners.add(
          middle.plus(besideIn * cosine - overIn * sine, besideIn * sine + overIn * cosine));
    }
    draw(crossbeam, corners);
  }

  /** The heads of bolts through paired headers, where they are bored. */
  private void bolts() {
    outerHeaders()
        .forEach(
            header ->
                header.shape().bores().stream()
                    .filter(bore -> bore.face().equals("side"))
                    .forEach(bore -> bolt(header, bore)));
  }

  private void bolt(Subject.Lying header, Bore bore) {
    ScenePoint first = Projection.SIDE.of(header.place().first());
    ScenePoint last = Projection.SIDE.of(header.place().last());
    double lengthIn = header.place().first().toIn(header.place().last());
    scene.add(
        new Drawn.Round(
            first.towards(last, bore.atIn() / lengthIn).plus(0, bore.offIn()),
            Math.max(bore.diameterIn() / 2, BOLT_PX * pxIn),
            Tone.PAPER,
            LineClass.VISIBLE));
  }
}
