package org.scantling.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.scantling.drawing.Anchor;
import org.scantling.drawing.Hue;
import org.scantling.drawing.Ink;
import org.scantling.drawing.Lettering;
import org.scantling.drawing.LineClass;
import org.scantling.drawing.PaperBox;
import org.scantling.drawing.PaperPoint;
import org.scantling.drawing.Sheet;
import org.scantling.drawing.Tone;

/** A drawing on a page, stroke by stroke. */
final class DrawnSheet {
  private static final double PT_PER_PX = 0.75;

  /** Four of these make a circle. Source: the usual distance of the control points. */
  private static final double ROUND = 0.5523;

  private final Sheet sheet;
  private final PaperBox edges;
  private final Fonts fonts;
  private final double ptPerPx;
  private double leftPt;
  private double topPt;

  DrawnSheet(Sheet sheet, Fonts fonts, double widestPt, double highestPt) {
    this.sheet = sheet;
    this.edges = sheet.bareEdges();
    this.fonts = fonts;
    this.ptPerPx =
        Math.min(
            PT_PER_PX,
            Math.min(
                widestPt / (edges.rightPx() - edges.leftPx()),
                highestPt / (edges.bottomPx() - edges.topPx())));
  }

  double widePt() {
    return (edges.rightPx() - edges.leftPx()) * ptPerPx;
  }

  double highPt() {
    return (edges.bottomPx() - edges.topPx()) * ptPerPx;
  }

  /**
   * @param left of its box, from the left of the paper
   * @param top of its box, from the foot of the paper
   */
  void draw(PDPageContentStream out, double left, double top) throws IOException {
    this.leftPt = left;
    this.topPt = top;
    for (Ink ink : sheet.bare()) {
      draw(out, ink);
    }
  }

  private void draw(PDPageContentStream out, Ink ink) throws IOException {
    if (ink instanceof Ink.Path path) {
      path(out, path);
    } else if (ink instanceof Ink.Disc disc) {
      disc(out, disc);
    } else if (ink instanceof Ink.Letters letters) {
      letters(out, letters);
    } else if (ink instanceof Ink.Measure measure) {
      for (Ink.Path line : measure.lines()) {
        path(out, line);
      }
      letters(out, measure.letters());
    }
  }

  private float x(PaperPoint point) {
    return (float) (leftPt + (point.rightPx() - edges.leftPx()) * ptPerPx);
  }

  private float y(PaperPoint point) {
    return (float) (topPt - (point.downPx() - edges.topPx()) * ptPerPx);
  }

  private void path(PDPageContentStream out, Ink.Path path) throws IOException {
    if (path.tone() == Tone.NONE && path.line() == LineClass.NONE) {
      return;
    }
    List<PaperPoint> points = path.points();
    out.moveTo(x(points.get(0)), y(points.get(0)));
    for (PaperPoint point : points.subList(1, points.size())) {
      out.lineTo(x(point), y(point));
    }
    if (path.closed()) {
      out.closePath();
    }
    paint(out, path.tone(), path.line());
  }

  private void disc(PDPageContentStream out, Ink.Disc disc) throws IOException {
    float x = x(disc.middle());
    float y = y(disc.middle());
    float r = (float) (disc.radiusPx() * ptPerPx);
    float k = (float) (ROUND * r);
    out.moveTo(x + r, y);
    out.curveTo(x + r, y + k, x + k, y + r, x, y + r);
    out.curveTo(x - k, y + r, x - r, y + k, x - r, y);
    out.curveTo(x - r, y - k, x - k, y - r, x, y - r);
    out.curveTo(x + k, y - r, x + r, y - k, x + r, y);
    out.closePath();
    paint(out, disc.tone(), disc.line());
  }

  private void paint(PDPageContentStream out, Tone tone, LineClass line) throws IOException {
    boolean edge = line.widthPx() > 0;
    Optional<Hue> fill = tone.hue();
    if (fill.isPresent()) {
      out.setNonStrokingColor(Flow.color(fill.get()));
    }
    if (edge) {
      out.setStrokingColor(Flow.color(line.hue()));
      out.setLineWidth((float) (line.widthPx() * ptPerPx));
      out.setLineDashPattern(dashes(line), 0);
      out.setLineJoinStyle(1);
    }
    if (fill.isPresent() && edge) {
      out.fillAndStroke();
    } else if (fill.isPresent()) {
      out.fill();
    } else {
      out.stroke();
    }
  }

  private float[] dashes(LineClass line) {
    float[] dashes = new float[line.dashesPx().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = (float) (line.dashesPx().get(i) * ptPerPx);
    }
    return dashes;
  }

  private void letters(PDPageContentStream out, Ink.Letters letters) throws IOException {
    Lettering kind = letters.lettering();
    Type type =
        new Type(
            kind.bold() ? Face.DRAWN_BOLD : Face.DRAWN, kind.sizePx() * ptPerPx, 0, kind.hue());
    String words = fonts.settable(letters.words(), type.face());
    double beforePt = fonts.widePt(words, type) * before(letters.anchor());
    double x = x(letters.at()) - (letters.turned() ? 0 : beforePt);
    double y = y(letters.at()) - (letters.turned() ? beforePt : 0);
    out.beginText();
    out.setFont(fonts.font(type.face()), (float) type.sizePt());
    out.setNonStrokingColor(Flow.color(type.hue()));
    out.setTextMatrix(
        letters.turned()
            ? Matrix.getRotateInstance(Math.PI / 2, (float) x, (float) y)
            : Matrix.getTranslateInstance((float) x, (float) y));
    out.showText(words);
    out.endText();
  }

  private static double before(Anchor anchor) {
    return anchor.beforeRatio();
  }
}
