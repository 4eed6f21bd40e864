package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;
import org.scantling.sayings.Sayings;

/** Puts a heading over a drawing, sentences and a scale bar under it. */
final class SheetBuilder {
  private static final Sayings SAYINGS = Sayings.of("drawing");
  private static final double HEAD_PX = 22;
  private static final double NOTE_PX = 19;
  private static final double GAP_PX = 34;
  private static final double LEAST_WIDTH_PX = 640;
  private static final double BAR_PX = 6;

  private final Crowd crowd;
  private final double scalePxPerIn;
  private final PaperBox edges;
  private final double widePx;

  SheetBuilder(Crowd crowd, double scalePxPerIn) {
    List<PaperPoint> reach = new ArrayList<>();
    crowd.inks().forEach(each -> reach.addAll(each.reach()));
    this.crowd = crowd;
    this.scalePxPerIn = scalePxPerIn;
    this.edges = PaperBox.around(reach);
    this.widePx = Math.max(edges.rightPx() - edges.leftPx(), LEAST_WIDTH_PX);
  }

  /**
   * @param name of the file
   * @param title of the job
   * @param view what the drawing shows of it
   * @param notes sentences under the drawing, which also say what it shows to those who do not see
   */
  Sheet sheet(String name, String title, String view, List<String> notes, boolean metric) {
    List<Ink> bare = new ArrayList<>(crowd.inks());
    bare.addAll(scaleBar(edges.bottomPx() + GAP_PX, metric));
    head(title, view);
    double downPx = edges.bottomPx() + GAP_PX;
    List<String> lines = new ArrayList<>(notes);
    lines.add(SAYINGS.say(metric ? "figures.metric" : "figures.imperial"));
    for (String note : lines) {
      for (String line : wrapped(note, Lettering.NOTE)) {
        write(line, Lettering.NOTE, downPx);
        downPx += NOTE_PX;
      }
    }
    scaleBar(downPx + NOTE_PX / 2, metric).forEach(crowd::add);
    return new Sheet(
        name,
        SAYINGS.say("title", "title", title, "view", view),
        String.join(" ", notes),
        scalePxPerIn,
        notes,
        bare,
        crowd.inks());
  }

  private void head(String title, String view) {
    List<String> lines = wrapped(title, Lettering.HEAD);
    double upPx = edges.topPx() - GAP_PX;
    write(view, Lettering.NOTE, upPx);
    upPx -= HEAD_PX;
    for (int i = lines.size() - 1; i >= 0; i--) {
      write(lines.get(i), Lettering.HEAD, upPx);
      upPx -= HEAD_PX;
    }
  }

  private void write(String words, Lettering lettering, double downPx) {
    crowd.add(
        new Ink.Letters(
            words, lettering, new PaperPoint(edges.leftPx(), downPx), Anchor.START, false));
  }

  /** Lines no wider than the drawing; a word that is too long by itself is cut short. */
  private List<String> wrapped(String words, Lettering lettering) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words.strip().split("\\s+")) {
      String with = line.isEmpty() ? word : line + " " + word;
      if (LetterWidths.widthPx(with, lettering) <= widePx) {
        line = with;
      } else {
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = LetterWidths.shortened(word, lettering, widePx);
      }
    }
    lines.add(line);
    return lines;
  }

  private List<Ink> scaleBar(double downPx, boolean metric) {
    List<Ink> bar = new ArrayList<>();
    ScaleBar bars = ScaleBar.of(scalePxPerIn, metric);
    int parts = bars.parts();
    double partPx = bars.partIn() * scalePxPerIn;
    for (int i = 0; i < parts; i++) {
      PaperPoint at = new PaperPoint(edges.leftPx() + i * partPx, downPx);
      bar.add(
          new Ink.Path(
              List.of(at, at.plus(partPx, 0), at.plus(partPx, BAR_PX), at.plus(0, BAR_PX)),
              true,
              i % 2 == 0 ? Tone.INK : Tone.PAPER,
              LineClass.VISIBLE,
              ""));
    }
    bar.add(
        new Ink.Letters(
            bars.words(),
            Lettering.NOTE,
            new PaperPoint(edges.leftPx() + parts * partPx + 10, downPx + BAR_PX + 2),
            Anchor.START,
            false));
    return bar;
  }
}
