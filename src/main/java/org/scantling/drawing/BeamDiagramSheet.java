package org.scantling.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.scantling.reasons.BeamDiagram;
import org.scantling.sayings.Sayings;

/** Shear or moment drawn under its beam, the most of each sign with its place and amount. */
final class BeamDiagramSheet {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double WIDEST_PX = 560;
  private static final double BEAM_PX = 8;
  private static final double SUPPORT_PX = 12;
  private static final double SPANS_PX = 46;
  private static final double SPANS_END_PX = 5;
  private static final double FIRST_PX = 92;
  private static final double MOST_PX = 66;
  private static final double LABEL_PX = 6;
  private static final double UNDER_PX = 16;
  private static final double TICK_PX = 3.5;

  private final BeamDiagram diagram;
  private final DiagramWords words;
  private final DrawnLengths lengths;
  private final double pxPerIn;
  private final double pxPerUnit;
  private final double axisPx;
  private final Crowd crowd = new Crowd();

  BeamDiagramSheet(BeamDiagram diagram, DiagramWords words, DrawnLengths lengths, Room room) {
    this.diagram = diagram;
    this.words = words;
    this.lengths = lengths;
    this.pxPerIn = Math.min(WIDEST_PX, room.widePx()) / diagram.lengthIn();
    double most =
        diagram.curve().stream().mapToDouble(each -> Math.abs(each.amount())).max().orElse(0);
    this.pxPerUnit = most > 0 ? MOST_PX / most : 0;
    double upward = diagram.curve().stream().mapToDouble(BeamDiagram.At::amount).max().orElse(0);
    this.axisPx = FIRST_PX + Math.max(0, upward) * pxPerUnit;
  }

  Sheet sheet() {
    beam();
    spans();
    curve();
    diagram.extremes().forEach(this::extreme);
    Map<String, String> blanks = new HashMap<>();
    blanks.put("what", SAYINGS.say("diagram." + diagram.kind().word()));
    blanks.put("role", words.role());
    blanks.put("combination", diagram.combination());
    blanks.put("check", words.check());
    if (diagram.kind() == BeamDiagram.Kind.MOMENT) {
      blanks.put("sagging", "");
    }
    if (!diagram.cutsIn().isEmpty()) {
      blanks.put("cut", "");
    }
    String says = SAYINGS.say("diagram.notes", blanks);
    return new Sheet(
        "diagram-" + diagram.role() + "-" + diagram.kind().word(),
        SAYINGS.say("diagram.title", blanks),
        says,
        pxPerIn,
        List.of(says),
        crowd.inks(),
        crowd.inks());
  }

  private double x(double atIn) {
    return atIn * pxPerIn;
  }

  private PaperPoint at(BeamDiagram.At each) {
    return new PaperPoint(x(each.atIn()), axisPx - each.amount() * pxPerUnit);
  }

  /** The beam by its outline; where pieces meet, a line across it. */
  private void beam() {
    double longPx = x(diagram.lengthIn());
    crowd.add(
        new Ink.Path(
            List.of(
                new PaperPoint(0, 0),
                new PaperPoint(longPx, 0),
                new PaperPoint(longPx, BEAM_PX),
                new PaperPoint(0, BEAM_PX)),
            true,
            Tone.TIMBER,
            LineClass.VISIBLE,
            ""));
    for (double cut : diagram.cutsIn()) {
      crowd.add(
          Ink.Path.stroke(
              new PaperPoint(x(cut), 0), new PaperPoint(x(cut), BEAM_PX), LineClass.VISIBLE));
    }
    for (double support : diagram.supportsIn()) {
      PaperPoint tip = new PaperPoint(x(support), BEAM_PX);
      crowd.add(
          new Ink.Path(
              List.of(
                  tip, tip.plus(SUPPORT_PX / 2, SUPPORT_PX), tip.plus(-SUPPORT_PX / 2, SUPPORT_PX)),
              true,
              Tone.PAPER,
              LineClass.VISIBLE,
              ""));
    }
  }

  /** From support to support, where each figure has room over its own line. */
  private void spans() {
    List<Double> stops = new ArrayList<>();
    stops.add(0.0);
    diagram.supportsIn().stream().filter(each -> each > 0).forEach(stops::add);
    if (stops.get(stops.size() - 1) < diagram.lengthIn()) {
      stops.add(diagram.lengthIn());
    }
    for (double stop : stops) {
      PaperPoint on = new PaperPoint(x(stop), SPANS_PX);
      crowd.add(
          Ink.Path.stroke(on.plus(-TICK_PX, TICK_PX), on.plus(TICK_PX, -TICK_PX), LineClass.TICK));
    }
    for (int i = 0; i + 1 < stops.size(); i++) {
      double longIn = stops.get(i + 1) - stops.get(i);
      PaperPoint from = new PaperPoint(x(stops.get(i)), SPANS_PX);
      PaperPoint to = new PaperPoint(x(stops.get(i + 1)), SPANS_PX);
      Ink.Path line = Ink.Path.stroke(from, to, LineClass.THIN);
      Ink.Letters figure =
          new Ink.Letters(
              lengths.figure(longIn),
              Lettering.FIGURE,
              from.towards(to, 0.5).plus(0, -SPANS_END_PX),
              Anchor.MIDDLE,
              false);
      if (crowd.roomFor(figure)) {
        crowd.add(new Ink.Measure(diagram.role() + " span " + i, List.of(line), figure));
      } else {
        crowd.add(line);
      }
    }
  }

  private void curve() {
    List<PaperPoint> points = diagram.curve().stream().map(this::at).toList();
    List<PaperPoint> area = new ArrayList<>(points);
    area.add(new PaperPoint(x(diagram.lengthIn()), axisPx));
    area.add(0, new PaperPoint(0, axisPx));
    crowd.add(new Ink.Path(area, true, Tone.SOIL, LineClass.NONE, ""));
    crowd.add(new Ink.Path(points, false, Tone.NONE, LineClass.VISIBLE, ""));
    crowd.add(
        Ink.Path.stroke(
            new PaperPoint(0, axisPx),
            new PaperPoint(x(diagram.lengthIn()), axisPx),
            LineClass.TICK));
    for (double support : diagram.supportsIn()) {
      crowd.add(
          Ink.Path.stroke(
              new PaperPoint(x(support), axisPx - TICK_PX),
              new PaperPoint(x(support), axisPx + TICK_PX),
              LineClass.TICK));
    }
  }

  /** Beyond the curve where it is most; a stroke from the axis shows where that is. */
  private void extreme(BeamDiagram.At extreme) {
    PaperPoint tip = at(extreme);
    boolean up = extreme.amount() > 0;
    String label =
        SAYINGS.say(
            "diagram.most",
            "amount",
            words.said(diagram.kind().measure(extreme.amount())),
            "place",
            lengths.said(extreme.atIn()));
    List<Ink.Letters> spots = new ArrayList<>();
    for (double offPx : new double[] {LABEL_PX, LABEL_PX + UNDER_PX, LABEL_PX + 2 * UNDER_PX}) {
      double downPx = up ? -offPx : offPx + UNDER_PX / 2;
      spots.add(letters(label, tip.plus(0, downPx), Anchor.MIDDLE));
      spots.add(letters(label, tip.plus(-LABEL_PX, downPx), Anchor.START));
      spots.add(letters(label, tip.plus(LABEL_PX, downPx), Anchor.END));
    }
    Ink.Letters letters = crowd.first(spots).orElse(spots.get(spots.size() - 3));
    Ink.Path ordinate = Ink.Path.stroke(new PaperPoint(tip.rightPx(), axisPx), tip, LineClass.TICK);
    String of = diagram.role() + " " + diagram.kind().word() + (up ? " most" : " least");
    crowd.add(new Ink.Measure(of, List.of(ordinate), letters));
  }

  private static Ink.Letters letters(String words, PaperPoint at, Anchor anchor) {
    return new Ink.Letters(words, Lettering.FIGURE, at, anchor, false);
  }
}
