package org.scantling.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.scantling.drawing.Hue;
import org.scantling.drawing.Sheet;
import org.scantling.sheets.Part;

/**
 * A drawing at its full size, on as many pages as it takes: each begins with what to do and a line
 * to measure after printing. Where it is drawn over several, a frame shows where pages join.
 */
final class FullSizePages {
  private static final double MARGIN_PT = 36;
  private static final double TICK_PT = 6;
  private static final double CHECK_HIGH_PT = 34;
  private static final double FRAME_PT = 0.4;

  private final Flow flow;
  private final Part.FullSize part;
  private final DrawnSheet drawn;

  FullSizePages(Flow flow, Part.FullSize part) {
    this.flow = flow;
    this.part = part;
    this.drawn =
        new DrawnSheet(
            part.drawing(), flow.fonts(), Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** Where a tile lies in the drawing, and how much of the paper it takes. */
  private record Tile(double leftPt, double topPt, double widePt, double highPt) {}

  void draw(PDStructureElement top) {
    flow.newPage();
    double widePt = flow.widePt() + 2 * (Flow.leftPt() - MARGIN_PT);
    int across = (int) Math.ceil(drawn.widePt() / widePt);
    head(top);
    double highPt = flow.highPt() - flow.downPt();
    int down = (int) Math.ceil(drawn.highPt() / highPt);
    for (int row = 0; row < down; row++) {
      for (int column = 0; column < across; column++) {
        if (row + column > 0) {
          flow.newPage();
          head(top);
        }
        tile(top, new Tile(column * widePt, row * highPt, widePt, highPt), across * down > 1);
      }
    }
  }

  private void head(PDStructureElement top) {
    flow.text(Tags.under(top, "H2"), Type.SECTION, Flow.leftPt(), flow.widePt(), part.heading());
    for (String each : part.says()) {
      flow.text(Tags.under(top, "P"), Type.SMALL, Flow.leftPt(), flow.widePt(), each);
    }
    check(Tags.under(top, "P"));
  }

  /** The line that is measured after printing. */
  private void check(PDStructureElement element) {
    double base = flow.downPt() + CHECK_HIGH_PT / 2;
    double longPt = part.checkPt();
    flow.artifact(
        out -> {
          float x = (float) Flow.leftPt();
          float y = (float) flow.upPt(base);
          ink(out, 1);
          out.moveTo(x, y);
          out.lineTo((float) (x + longPt), y);
          out.stroke();
          for (double at : new double[] {0, longPt}) {
            out.moveTo((float) (x + at), (float) (y - TICK_PT));
            out.lineTo((float) (x + at), (float) (y + TICK_PT));
            out.stroke();
          }
        });
    flow.words(element, Type.HEAD, Flow.leftPt() + longPt + 10, base + 3, part.checkWords());
    flow.past(CHECK_HIGH_PT);
  }

  private static void ink(PDPageContentStream out, double widthPt) throws IOException {
    out.setStrokingColor(Flow.color(Hue.INK));
    out.setLineWidth((float) widthPt);
    out.setLineDashPattern(new float[0], 0);
  }

  private void tile(PDStructureElement top, Tile tile, boolean framed) {
    Sheet sheet = part.drawing();
    PDStructureElement figure = Tags.under(top, "Figure");
    figure.setAlternateDescription(sheet.title() + ". " + sheet.says());
    double topPt = flow.upPt(flow.downPt());
    double highPt = Math.min(tile.highPt(), drawn.highPt() - tile.topPt());
    double widePt = Math.min(tile.widePt(), drawn.widePt() - tile.leftPt());
    PDRectangle room =
        new PDRectangle(
            (float) MARGIN_PT, (float) (topPt - highPt), (float) widePt, (float) highPt);
    Tags.box(figure, room);
    flow.marked(
        figure,
        out -> {
          out.saveGraphicsState();
          out.addRect(
              room.getLowerLeftX(), room.getLowerLeftY(), room.getWidth(), room.getHeight());
          out.clip();
          drawn.draw(out, MARGIN_PT - tile.leftPt(), topPt + tile.topPt());
          out.restoreGraphicsState();
          if (framed) {
            ink(out, FRAME_PT);
            out.addRect(
                room.getLowerLeftX(), room.getLowerLeftY(), room.getWidth(), room.getHeight());
            out.stroke();
          }
        });
    flow.past(highPt);
  }
}
