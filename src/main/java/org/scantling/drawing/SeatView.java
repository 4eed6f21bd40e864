package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.scantling.sayings.Sayings;
import org.scantling.shop.EndCut;
import org.scantling.shop.Recess;

/** A crossbeam on the header of row A: its notches and its tail, the tip on the left. */
final class SeatView implements DetailView {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double PAST_SEAT_IN = 7;
  private static final double POST_IN = 4;
  private static final double NAME_PX = 6;
  private static final double HAIR_IN = 1e-6;

  private final Subject subject;
  private final Subject.Lying beam;
  private final UnaryOperator<ScenePoint> lay;
  private final List<Board> boards;

  /** A header sawn across, in the frame of the crossbeam. */
  private record Board(String mark, String size, ScenePoint low, ScenePoint high) {}

  SeatView(Subject subject) {
    this.subject = subject;
    this.beam = chosen();
    this.lay = PieceOutline.laying(Projection.END, beam.shape(), beam.place());
    this.boards = boards();
  }

  /** One between the posts, where there is such a one. */
  private Subject.Lying chosen() {
    return subject
        .lying("crossbeam")
        .min(
            Comparator.comparing(
                each ->
                    each.shape().recesses().stream()
                        .anyMatch(recess -> !recess.seat().role().equals("header"))))
        .orElseThrow();
  }

  private double halfIn() {
    return beam.shape().depthIn() / 2;
  }

  private List<Board> boards() {
    List<Board> found = new ArrayList<>();
    subject
        .lying("header")
        .filter(each -> each.middleAcrossIn() < subject.rowSpacingIn() / 2)
        .filter(each -> each.fromAlongIn() <= beam.alongIn() && each.toAlongIn() >= beam.alongIn())
        .map(this::board)
        .filter(
            each ->
                found.stream()
                    .noneMatch(
                        other -> Math.abs(other.low().rightIn() - each.low().rightIn()) < HAIR_IN))
        .forEach(found::add);
    found.sort(Comparator.comparingDouble(each -> each.low().rightIn()));
    return found;
  }

  /** Square to the header, which the crossbeam leans with. */
  private Board board(Subject.Lying header) {
    ScenePoint first = Projection.SIDE.of(header.place().first());
    ScenePoint last = Projection.SIDE.of(header.place().last());
    double share = (beam.alongIn() - first.rightIn()) / (last.rightIn() - first.rightIn());
    double plumbIn = first.towards(last, share).upIn() - beam.place().first().upIn();
    double upIn = plumbIn / Math.hypot(1, subject.fallRatio());
    double middleIn =
        lay.apply(new ScenePoint(-header.middleAcrossIn(), beam.place().first().upIn())).rightIn();
    double broadIn = header.shape().breadthIn() / 2;
    double deepIn = header.shape().depthIn() / 2;
    return new Board(
        header.mark(),
        header.shape().size(),
        new ScenePoint(middleIn - broadIn, upIn - deepIn),
        new ScenePoint(middleIn + broadIn, upIn + deepIn));
  }

  /** The notches over row A. */
  private List<Recess> notches() {
    double halfwayIn = beam.shape().lengthIn() / 2;
    return beam.shape().recesses().stream().filter(each -> each.toIn() < halfwayIn).toList();
  }

  @Override
  public double wideIn() {
    double seatIn = boards.get(boards.size() - 1).high().rightIn();
    double cutIn = notches().stream().mapToDouble(Recess::toIn).max().orElse(seatIn);
    return Math.max(seatIn, cutIn) + PAST_SEAT_IN;
  }

  private double lowIn() {
    return boards.get(0).low().upIn() - POST_IN;
  }

  @Override
  public void draw(Scene scene, double pxIn) {
    CutOut cut =
        new CutOut(
            scene, new ScenePoint(-1, lowIn()), new ScenePoint(wideIn(), halfIn() + 1), pxIn);
    post(scene);
    boards.forEach(
        each ->
            scene.add(
                new Drawn.EndGrain(
                    Scene.corners(each.low(), each.high()),
                    Tone.TIMBER,
                    LineClass.CUT,
                    each.mark())));
    cut.timber(
        PieceOutline.laidFlat(Projection.END, beam.shape(), beam.place(), 0),
        LineClass.VISIBLE,
        beam.mark());
    along(scene);
    depths(scene);
    tail(scene);
    names(scene);
  }

  /** The post under the row, beyond. */
  private void post(Scene scene) {
    double halfPostIn = subject.geometry().posts().breadthIn() / 2;
    double middleIn =
        (boards.get(0).low().rightIn() + boards.get(boards.size() - 1).high().rightIn()) / 2;
    double topIn = boards.size() > 1 ? boards.get(0).high().upIn() : boards.get(0).low().upIn();
    for (int side : new int[] {-1, 1}) {
      double atIn = middleIn + side * halfPostIn;
      scene.line(new ScenePoint(atIn, lowIn()), new ScenePoint(atIn, topIn), LineClass.HIDDEN);
    }
  }

  private Drawn.Figure figure(String of, double lengthIn) {
    return subject.lengths().of("detail " + beam.mark() + " " + of, lengthIn);
  }

  /** From the tip to the notches, or to the faces of the headers where nothing is notched. */
  private void along(Scene scene) {
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    stops.add(new ScenePoint(0, halfIn()));
    List<Recess> notches = notches();
    for (int i = 0; i < notches.size(); i++) {
      Recess each = notches.get(i);
      double upIn = -halfIn() + each.depthIn();
      String notch = "recess " + i;
      double beforeIn = i == 0 ? 0 : notches.get(i - 1).toIn();
      figures.add(figure(notch + (i == 0 ? " from" : " after"), each.fromIn() - beforeIn));
      stops.add(new ScenePoint(each.fromIn(), upIn));
      figures.add(figure(notch + " width", each.widthIn()));
      stops.add(new ScenePoint(each.toIn(), upIn));
    }
    if (notches.isEmpty()) {
      figures.add(figure("tail", boards.get(0).low().rightIn()));
      stops.add(new ScenePoint(boards.get(0).low().rightIn(), -halfIn()));
    }
    scene.add(new Drawn.Dimension(Side.ABOVE, 0, stops, figures));
  }

  private void depths(Scene scene) {
    double rightIn = wideIn();
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    List<Recess> notches = notches();
    stops.add(new ScenePoint(rightIn, -halfIn()));
    if (notches.isEmpty()) {
      figures.add(figure("depth", beam.shape().depthIn()));
    } else {
      int last = notches.size() - 1;
      Recess notch = notches.get(last);
      stops.add(new ScenePoint(notch.toIn(), -halfIn() + notch.depthIn()));
      figures.add(figure("recess " + last + " depth", notch.depthIn()));
      figures.add(figure("recess " + last + " left", beam.shape().depthIn() - notch.depthIn()));
    }
    stops.add(new ScenePoint(rightIn, halfIn()));
    scene.add(new Drawn.Dimension(Side.RIGHT, 0, stops, figures));
  }

  private void tail(Scene scene) {
    if (beam.shape().first() instanceof EndCut.Shaped shaped) {
      double noseIn = shaped.outline().get(1).downIn();
      EndCut.Corner foot = shaped.outline().get(shaped.outline().size() - 1);
      ScenePoint nose = new ScenePoint(0, halfIn() - noseIn);
      ScenePoint under = new ScenePoint(foot.backIn(), halfIn() - foot.downIn());
      scene.add(
          new Drawn.Dimension(
              Side.LEFT,
              0,
              List.of(under, nose, new ScenePoint(0, halfIn())),
              List.of(figure("cut", foot.downIn() - noseIn), figure("nose", noseIn))));
      scene.add(
          new Drawn.Dimension(
              Side.BELOW, 0, List.of(nose, under), List.of(figure("run", foot.backIn()))));
    }
  }

  private void names(Scene scene) {
    scene.add(
        new Drawn.Note(
            beam.mark() + "  " + beam.shape().size(),
            Lettering.MARK,
            List.of(
                new Drawn.Spot(new ScenePoint(wideIn() / 2, 0), 0, 5, Anchor.MIDDLE),
                new Drawn.Spot(new ScenePoint(wideIn() / 4, 0), 0, 5, Anchor.MIDDLE))));
    Board last = boards.get(boards.size() - 1);
    double middleIn = (last.low().upIn() + last.high().upIn()) / 2;
    scene.add(
        new Drawn.Note(
            last.mark() + "  " + last.size(),
            Lettering.MARK,
            List.of(
                new Drawn.Spot(
                    new ScenePoint(last.high().rightIn(), middleIn), NAME_PX, 8, Anchor.START),
                new Drawn.Spot(
                    new ScenePoint(last.high().rightIn(), middleIn),
                    NAME_PX * 5,
                    8,
                    Anchor.START))));
  }

  @Override
  public List<String> notes() {
    Map<String, String> blanks = new HashMap<>();
    blanks.put("beam", beam.mark());
    blanks.put("size", beam.shape().size());
    blanks.put("thick", subject.lengths().said(beam.shape().breadthIn()));
    blanks.put("end", beam.shape().ends().first());
    if (!notches().isEmpty()) {
      blanks.put("notches", "");
    }
    if (beam.shape().first() instanceof EndCut.Shaped) {
      blanks.put("shaped", "");
    }
    return List.of(SAYINGS.say("detail-seat.notes", blanks));
  }
}
