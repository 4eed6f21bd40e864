package org.scantling.pdf;

import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.scantling.drawing.Hue;
import org.scantling.sheets.Paper;

/** Fills one page after the other from the top; the library of PDF works in points. */
final class Flow {
  private static final double SIDE_PT = 50;
  private static final double TOP_PT = 52;
  private static final double BOTTOM_PT = 58;
  private static final double HAIR_PT = 0.4;
  private static final Color HAIR = new Color(0xCF, 0xC9, 0xBD);
  private static final Color SHADE = new Color(0xF5, 0xF2, 0xEC);

  private final PDDocument document;
  private final PDRectangle paper;
  private final Fonts fonts;
  private final Tags tags;
  private final List<PDPage> pages = new ArrayList<>();
  private PDPageContentStream stream;
  private PDPage page;
  private double downPt;

  Flow(PDDocument document, Paper paper, Fonts fonts, Tags tags) {
    this.document = document;
    this.paper = paper == Paper.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
    this.fonts = fonts;
    this.tags = tags;
    this.page = new PDPage(this.paper);
    this.stream = begin();
  }

  /** Something that writes to a page. */
  interface Drawing {
    void on(PDPageContentStream stream) throws IOException;
  }

  Fonts fonts() {
    return fonts;
  }

  Tags tags() {
    return tags;
  }

  static double leftPt() {
    return SIDE_PT;
  }

  double widePt() {
    return paper.getWidth() - 2 * SIDE_PT;
  }

  double highPt() {
    return paper.getHeight() - TOP_PT - BOTTOM_PT;
  }

  /** How far down the page is filled. */
  double downPt() {
    return downPt;
  }

  /** Height of a place above the foot of the paper. */
  double upPt(double fromTopPt) {
    return paper.getHeight() - TOP_PT - fromTopPt;
  }

  private PDPageContentStream begin() {
    document.addPage(page);
    pages.add(page);
    tags.page(page);
    downPt = 0;
    try {
      return new PDPageContentStream(document, page);
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  boolean atTop() {
    return downPt == 0;
  }

  void newPage() {
    if (!atTop()) {
      close();
      page = new PDPage(paper);
      stream = begin();
    }
  }

  /** Turns to the next page where that much does not fit on this one. */
  boolean need(double highPt) {
    if (downPt + highPt > highPt() && !atTop()) {
      newPage();
      return true;
    }
    return false;
  }

  void space(double pt) {
    downPt = atTop() ? 0 : downPt + pt;
  }

  /** Goes down over what was drawn. */
  void past(double pt) {
    downPt += pt;
  }

  /** Draws what means nothing by itself. */
  void artifact(Drawing drawing) {
    write(
        out -> {
          out.beginMarkedContent(COSName.ARTIFACT);
          drawing.on(out);
          out.endMarkedContent();
        });
  }

  /** Draws a part of an element. */
  void marked(PDStructureElement element, Drawing drawing) {
    int mark = tags.mark(element, page);
    write(
        out -> {
          out.beginMarkedContent(COSName.getPDFName(element.getStructureType()), mark);
          drawing.on(out);
          out.endMarkedContent();
        });
  }

  private void write(Drawing drawing) {
    try {
      drawing.on(stream);
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  /** One line of an element, its letters standing that far below the top of the page. */
  void words(PDStructureElement element, Type type, double leftPt, double basePt, String words) {
    marked(element, out -> letters(out, type, leftPt, upPt(basePt), words));
  }

  void letters(PDPageContentStream out, Type type, double x, double y, String words)
      throws IOException {
    out.beginText();
    out.setFont(fonts.font(type.face()), (float) type.sizePt());
    out.setNonStrokingColor(color(type.hue()));
    out.newLineAtOffset((float) x, (float) y);
    out.showText(words);
    out.endText();
  }

  /** Text from here down, over pages where it takes several. */
  void text(PDStructureElement element, Type type, double leftPt, double widePt, String text) {
    for (String line : fonts.lines(text, type, widePt)) {
      need(type.leadPt());
      words(element, type, leftPt, downPt + type.sizePt(), line);
      past(type.leadPt());
    }
  }

  double highPt(Type type, double widePt, String text) {
    return fonts.lines(text, type, widePt).size() * type.leadPt();
  }

  /** A thin line across. */
  void rule(double leftPt, double widePt, double fromTopPt) {
    artifact(
        out -> {
          out.setStrokingColor(HAIR);
          out.setLineWidth((float) HAIR_PT);
          out.moveTo((float) leftPt, (float) upPt(fromTopPt));
          out.lineTo((float) (leftPt + widePt), (float) upPt(fromTopPt));
          out.stroke();
        });
  }

  /** A tone behind what comes next. */
  void shade(double leftPt, double widePt, double highPt) {
    double fromPt = downPt;
    artifact(
        out -> {
          out.setNonStrokingColor(SHADE);
          out.addRect(
              (float) leftPt, (float) (upPt(fromPt) - highPt), (float) widePt, (float) highPt);
          out.fill();
        });
  }

  static Color color(Hue hue) {
    return Color.decode(hue.light());
  }

  private void close() {
    write(PDPageContentStream::close);
  }

  /** Closes the last page and writes at the foot of each what sheet it is, and its number. */
  void finish(String foot) {
    close();
    for (int i = 0; i < pages.size(); i++) {
      String number = (i + 1) + " / " + pages.size();
      page = pages.get(i);
      try (PDPageContentStream out =
          new PDPageContentStream(
              document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
        stream = out;
        artifact(
            at -> {
              double numberPt = fonts.widePt(number, Type.FOOT);
              String said = fonts.lines(foot, Type.FOOT, widePt() - numberPt - SIDE_PT).get(0);
              letters(at, Type.FOOT, SIDE_PT, BOTTOM_PT / 2, said);
              letters(at, Type.FOOT, paper.getWidth() - SIDE_PT - numberPt, BOTTOM_PT / 2, number);
            });
      } catch (IOException cannot) {
        throw new UncheckedIOException(cannot);
      }
    }
    tags.finish();
  }
}
