package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A scene laid out at a scale: first what is drawn, then its dimensions, then the words. */
final class Draft {
  private static final double ZIGZAG_PX = 5;

  private final Windows windows;
  private final PaperPoint origin;
  private final Crowd crowd;
  private final List<PaperPoint> reach = new ArrayList<>();

  private Draft(Windows windows, PaperPoint origin, Crowd crowd) {
    this.windows = windows;
    this.origin = origin;
    this.crowd = crowd;
  }

  /**
   * Draws a scene.
   *
   * @param origin where the place from which the structure is measured comes to lie
   * @param crowd what lies on the sheet already, to which this is added
   */
  static Draft of(Scene scene, Windows windows, PaperPoint origin, Crowd crowd) {
    Draft draft = new Draft(windows, origin, crowd);
    scene.all().forEach(draft::shape);
    draft.breakOut();
    new DimensionLines(draft, crowd).add(scene.all());
    scene.all().forEach(draft::note);
    return draft;
  }

  /** What it takes up without its dimensions. */
  PaperBox bounds() {
    return PaperBox.around(reach);
  }

  Windows windows() {
    return windows;
  }

  PaperPoint at(ScenePoint point) {
    return origin.plus(windows.rightPx(point.rightIn()), -point.upIn() * windows.scalePxPerIn());
  }

  private void shape(Drawn drawn) {
    if (drawn instanceof Drawn.Line line) {
      line(line);
    } else if (drawn instanceof Drawn.Outline outline) {
      outline(outline.corners(), outline.tone(), outline.line(), outline.mark());
    } else if (drawn instanceof Drawn.Round round) {
      round(round);
    } else if (drawn instanceof Drawn.EndGrain grain && windows.shows(middleIn(grain))) {
      outline(grain.corners(), grain.tone(), grain.line(), grain.mark());
      line(new Drawn.Line(grain.corners().get(0), grain.corners().get(2), LineClass.THIN));
      line(new Drawn.Line(grain.corners().get(1), grain.corners().get(3), LineClass.THIN));
    }
  }

  private static double middleIn(Drawn.EndGrain grain) {
    return grain.corners().stream().mapToDouble(ScenePoint::rightIn).average().orElseThrow();
  }

  private void line(Drawn.Line line) {
    for (Windows.Stretch each : windows.stretches()) {
      List<ScenePoint> ends = Clip.line(line.from(), line.to(), each);
      if (!ends.isEmpty()) {
        draw(ends, each, false, Tone.NONE, line.line(), "");
      }
    }
  }

  private void outline(List<ScenePoint> corners, Tone tone, LineClass line, String mark) {
    for (Windows.Stretch each : windows.stretches()) {
      List<ScenePoint> left = Clip.area(corners, each);
      if (left.size() > 2) {
        draw(left, each, true, tone, line, mark);
      }
    }
  }

  private void round(Drawn.Round round) {
    if (windows.shows(round.middle().rightIn())) {
      Ink.Disc disc =
          new Ink.Disc(
              at(round.middle()),
              round.radiusIn() * windows.scalePxPerIn(),
              round.tone(),
              round.line());
      crowd.add(disc);
      reach.addAll(disc.reach());
    }
  }

  private void draw(
      List<ScenePoint> points,
      Windows.Stretch stretch,
      boolean closed,
      Tone tone,
      LineClass line,
      String mark) {
    List<PaperPoint> drawn = points.stream().map(each -> in(stretch, each)).toList();
    crowd.add(new Ink.Path(drawn, closed, tone, line, mark));
    reach.addAll(drawn);
  }

  /** A place in one stretch; at its very end it belongs to that one and not to the next. */
  private PaperPoint in(Windows.Stretch stretch, ScenePoint point) {
    return origin.plus(
        point.rightIn() * windows.scalePxPerIn() + stretch.shiftPx(),
        -point.upIn() * windows.scalePxPerIn());
  }

  /** Thin lines with a kink where the middle is left out. */
  private void breakOut() {
    if (!windows.isBroken()) {
      return;
    }
    PaperBox bounds = bounds().grown(2 * ZIGZAG_PX);
    double middlePx = (bounds.topPx() + bounds.bottomPx()) / 2;
    for (double breakPx : windows.breaksPx()) {
      double x = origin.rightPx() + breakPx;
      crowd.add(
          new Ink.Path(
              List.of(
                  new PaperPoint(x, bounds.topPx()),
                  new PaperPoint(x, middlePx - 2 * ZIGZAG_PX),
                  new PaperPoint(x - ZIGZAG_PX, middlePx - ZIGZAG_PX),
                  new PaperPoint(x + ZIGZAG_PX, middlePx + ZIGZAG_PX),
                  new PaperPoint(x, middlePx + 2 * ZIGZAG_PX),
                  new PaperPoint(x, bounds.bottomPx())),
              false,
              Tone.NONE,
              LineClass.THIN,
              ""));
    }
  }

  private void note(Drawn drawn) {
    if (drawn instanceof Drawn.Note note) {
      Stream<Ink.Letters> candidates =
          note.spots().stream()
              .filter(spot -> windows.shows(spot.at().rightIn()))
              .map(
                  spot ->
                      new Ink.Letters(
                          note.words(),
                          note.lettering(),
                          at(spot.at()).plus(spot.rightPx(), spot.downPx()),
                          spot.anchor(),
                          false));
      crowd.first(candidates.toList()).ifPresent(crowd::add);
    }
  }
}
