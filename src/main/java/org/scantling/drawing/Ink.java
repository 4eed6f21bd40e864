package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/** One thing on the sheet, in its place. */
public sealed interface Ink {

  /** Every point that it reaches to. */
  List<PaperPoint> reach();

  /** Its lines, as far as writing must keep off them. */
  default List<Path> strokes() {
    return List.of();
  }

  /** Its writing. */
  default List<Letters> writing() {
    return List.of();
  }

  /**
   * Strokes through points in turn.
   *
   * @param closed true where the last is joined to the first
   * @param mark of the piece that it is, or nothing
   */
  record Path(List<PaperPoint> points, boolean closed, Tone tone, LineClass line, String mark)
      implements Ink {
    public Path {
      points = List.copyOf(points);
    }

    static Path stroke(PaperPoint from, PaperPoint to, LineClass line) {
      return new Path(List.of(from, to), false, Tone.NONE, line, "");
    }

    @Override
    public List<PaperPoint> reach() {
      return points;
    }

    @Override
    public List<Path> strokes() {
      return line == LineClass.NONE && tone == Tone.NONE ? List.of() : List.of(this);
    }

    /** From point to point. */
    List<Path> segments() {
      List<Path> segments = new ArrayList<>();
      for (int i = 0; i + 1 < points.size(); i++) {
        segments.add(stroke(points.get(i), points.get(i + 1), line));
      }
      if (closed) {
        segments.add(stroke(points.get(points.size() - 1), points.get(0), line));
      }
      return segments;
    }
  }

  record Disc(PaperPoint middle, double radiusPx, Tone tone, LineClass line) implements Ink {
    private static final int CORNERS = 24;

    @Override
    public List<PaperPoint> reach() {
      return List.of(middle.plus(-radiusPx, -radiusPx), middle.plus(radiusPx, radiusPx));
    }

    @Override
    public List<Path> strokes() {
      List<PaperPoint> ring = new ArrayList<>();
      for (int step = 0; step < CORNERS; step++) {
        double turn = 2 * Math.PI * step / CORNERS;
        ring.add(middle.plus(radiusPx * Math.cos(turn), radiusPx * Math.sin(turn)));
      }
      return List.of(new Path(ring, true, tone, line, ""));
    }
  }

  /**
   * A line of writing.
   *
   * @param at where its anchor stands, on the line that letters stand on
   * @param turned true where it is read from the right
   */
  record Letters(String words, Lettering lettering, PaperPoint at, Anchor anchor, boolean turned)
      implements Ink {

    /** The room that it takes, rather too much than too little. */
    PaperBox box() {
      double longPx = LetterWidths.widthPx(words, lettering);
      double beforePx = longPx * anchor.beforeRatio();
      double upPx = LetterWidths.ascentPx(lettering);
      double downPx = LetterWidths.descentPx(lettering);
      double x = at.rightPx();
      double y = at.downPx();
      return turned
          ? new PaperBox(x - upPx, y - longPx + beforePx, x + downPx, y + beforePx)
          : new PaperBox(x - beforePx, y - upPx, x - beforePx + longPx, y + downPx);
    }

    @Override
    public List<PaperPoint> reach() {
      PaperBox box = box();
      return List.of(
          new PaperPoint(box.leftPx(), box.topPx()), new PaperPoint(box.rightPx(), box.bottomPx()));
    }

    @Override
    public List<Letters> writing() {
      return List.of(this);
    }
  }

  /**
   * A figure with the line whose length it tells.
   *
   * @param of what it measures
   * @param lines the line from end to end, in two parts where the figure stands in it
   */
  record Measure(String of, List<Path> lines, Letters letters) implements Ink {
    public Measure {
      lines = List.copyOf(lines);
    }

    @Override
    public List<PaperPoint> reach() {
      List<PaperPoint> reach = new ArrayList<>();
      lines.forEach(each -> reach.addAll(each.reach()));
      reach.addAll(letters.reach());
      return reach;
    }

    @Override
    public List<Path> strokes() {
      return lines;
    }

    @Override
    public List<Letters> writing() {
      return List.of(letters);
    }
  }
}
