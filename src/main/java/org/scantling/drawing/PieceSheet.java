package org.scantling.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.scantling.sayings.Sayings;
import org.scantling.shop.Bore;
import org.scantling.shop.EndCut;
import org.scantling.shop.Piece;
import org.scantling.shop.Place;
import org.scantling.shop.Recess;
import org.scantling.shop.Shape;

/**
 * One kind of piece lying on the sawhorse, the end that it is measured from on the left, with every
 * mark as the tape shows it from there.
 */
final class PieceSheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double MOST_PX_PER_IN = 7;
  private static final double MARK_PX = 15;
  private static final double ELBOW_PX = 16;
  private static final double HEAD_PX = 14;
  private static final double BORE_PX = 1.6;

  private final Subject subject;
  private final Piece piece;
  private final Shape shape;
  private final double scalePxPerIn;
  private final Scene scene = new Scene();

  PieceSheet(Subject subject, Piece piece, Room room) {
    this.subject = subject;
    this.piece = piece;
    this.shape = piece.shape();
    this.scalePxPerIn = Math.min(MOST_PX_PER_IN, room.widePx() / shape.lengthIn());
  }

  /** True of a piece that more is done to than to saw it square. */
  static boolean shows(Piece piece) {
    Shape shape = piece.shape();
    return !shape.recesses().isEmpty()
        || !shape.bores().isEmpty()
        || !(shape.first() instanceof EndCut.Square && shape.last() instanceof EndCut.Square);
  }

  Sheet sheet() {
    Place place = piece.places().get(0);
    Projection from = across(place) ? Projection.END : Projection.SIDE;
    List<ScenePoint> outline = PieceOutline.laidFlat(from, shape, place, subject.fallRatio());
    scene.add(new Drawn.Outline(outline, Tone.TIMBER, LineClass.VISIBLE, piece.mark()));
    shape.recesses().forEach(this::recess);
    shape.bores().forEach(this::bore);
    marks();
    heading();
    Crowd crowd = new Crowd();
    Draft.of(scene, Windows.whole(scalePxPerIn), new PaperPoint(0, 0), crowd);
    return new Sheet(
        "piece-" + piece.mark().toLowerCase(Locale.ROOT),
        SAYINGS.say("piece.title", "piece", called()),
        SAYINGS.say("piece.says", "piece", called(), "end", shape.ends().first()),
        scalePxPerIn,
        List.of(),
        crowd.inks(),
        crowd.inks());
  }

  private static boolean across(Place place) {
    return Math.abs(place.last().acrossIn() - place.first().acrossIn())
        > Math.abs(place.last().alongIn() - place.first().alongIn());
  }

  private double halfIn() {
    return PieceOutline.seenIn(shape) / 2;
  }

  /** What is cut out of the underside is seen in the outline; a housing is two lines across. */
  private void recess(Recess recess) {
    if (!recess.face().equals(PieceOutline.UNDERSIDE)) {
      for (double atIn : new double[] {recess.fromIn(), recess.toIn()}) {
        scene.line(
            new ScenePoint(atIn, -halfIn()), new ScenePoint(atIn, halfIn()), LineClass.HIDDEN);
      }
    }
  }

  private void bore(Bore bore) {
    if (bore.face().equals("side")) {
      scene.add(
          new Drawn.Round(
              new ScenePoint(bore.atIn(), bore.offIn()),
              Math.max(bore.diameterIn() / 2, BORE_PX / scalePxPerIn),
              Tone.PAPER,
              LineClass.VISIBLE));
    } else {
      scene.line(
          new ScenePoint(bore.atIn(), -halfIn()),
          new ScenePoint(bore.atIn(), halfIn()),
          LineClass.CENTRE);
    }
  }

  private List<Double> atIn() {
    TreeSet<Double> at = new TreeSet<>(List.of(0.0, shape.lengthIn()));
    shape.recesses().stream()
        .flatMap(each -> Stream.of(each.fromIn(), each.toIn()))
        .filter(each -> each > 0 && each < shape.lengthIn())
        .forEach(at::add);
    shape.bores().forEach(each -> at.add(each.atIn()));
    return List.copyOf(at);
  }

  /** Each at its place, or as near to it as the figures leave room. */
  private void marks() {
    List<Double> at = atIn();
    List<Double> stands = spread(at, MARK_PX / scalePxPerIn);
    double elbowIn = -halfIn() - ELBOW_PX / scalePxPerIn;
    List<ScenePoint> stops = new ArrayList<>();
    List<Drawn.Figure> figures = new ArrayList<>();
    for (int i = 0; i < at.size(); i++) {
      ScenePoint stop = new ScenePoint(stands.get(i), elbowIn);
      scene.line(new ScenePoint(at.get(i), -halfIn() - 3 / scalePxPerIn), stop, LineClass.THIN);
      stops.add(stop);
      figures.add(
          subject.lengths().of(piece.mark() + " " + shape.ends().first() + " " + i, at.get(i)));
    }
    scene.add(new Drawn.Running(Side.BELOW, -1, stops, figures));
  }

  /** In the same order, none nearer to the next than that, moved as little as that takes. */
  static List<Double> spread(List<Double> at, double apartIn) {
    double[] stands = at.stream().mapToDouble(each -> each).toArray();
    for (int pass = 0; pass < 4 * stands.length; pass++) {
      for (int i = 0; i + 1 < stands.length; i++) {
        double lackIn = apartIn - (stands[i + 1] - stands[i]);
        if (lackIn > 0) {
          stands[i] -= lackIn / 2;
          stands[i + 1] += lackIn / 2;
        }
      }
    }
    for (int i = 1; i < stands.length; i++) {
      stands[i] = Math.max(stands[i], stands[i - 1] + apartIn);
    }
    return Arrays.stream(stands).boxed().toList();
  }

  private String called() {
    return SAYINGS.say(
        "piece.called",
        "mark",
        piece.mark(),
        "count",
        Integer.toString(piece.count()),
        "role",
        shape.role(),
        "size",
        shape.size(),
        "length",
        subject.lengths().said(shape.lengthIn()));
  }

  private void heading() {
    scene.add(
        new Drawn.Note(
            called(),
            Lettering.MARK,
            List.of(new Drawn.Spot(new ScenePoint(0, halfIn()), 0, -HEAD_PX, Anchor.START))));
  }
}
