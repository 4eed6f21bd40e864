package org.scantling.pdf;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.scantling.sheets.Part;

/** A table: columns as wide as they need, rows kept whole, its head again on every page. */
final class TableLayout {
  private static final double BETWEEN_PT = 10;
  private static final double PAD_PT = 3;

  private final Flow flow;
  private final Part.Table table;
  private final double[] wides;

  TableLayout(Flow flow, Part.Table table) {
    this.flow = flow;
    this.table = table;
    this.wides = wides();
  }

  /** As wide as the text of each, or, where that is too much, what is left shared by need. */
  private double[] wides() {
    int columns = table.head().size();
    double[] whole = new double[columns];
    double[] least = new double[columns];
    for (int i = 0; i < columns; i++) {
      grow(whole, least, i, table.head().get(i), Type.HEAD);
      for (List<String> row : table.rows()) {
        grow(whole, least, i, row.get(i), type(i));
      }
    }
    double roomPt = flow.widePt() - BETWEEN_PT * (columns - 1);
    double wholePt = IntStream.range(0, columns).mapToDouble(i -> whole[i]).sum();
    if (wholePt <= roomPt) {
      return whole;
    }
    double leastPt = IntStream.range(0, columns).mapToDouble(i -> least[i]).sum();
    double share = Math.max(0, roomPt - leastPt) / Math.max(1, wholePt - leastPt);
    double shrink = Math.min(1, roomPt / leastPt);
    return IntStream.range(0, columns)
        .mapToDouble(i -> shrink * least[i] + share * (whole[i] - least[i]))
        .toArray();
  }

  private void grow(double[] whole, double[] least, int i, String text, Type type) {
    Fonts fonts = flow.fonts();
    whole[i] = Math.max(whole[i], fonts.widePt(fonts.settable(text, type.face()), type) + 1);
    least[i] = Math.max(least[i], fonts.longestWordPt(text, type) + 1);
  }

  void draw(PDStructureElement under) {
    PDStructureElement element = Tags.under(under, "Table");
    double firstPt = table.rows().isEmpty() ? 0 : highPt(table.rows().get(0));
    flow.need(headPt() + firstPt);
    head(Tags.under(element, "TR"));
    for (int i = 0; i < table.rows().size(); i++) {
      List<String> row = table.rows().get(i);
      if (flow.need(highPt(row))) {
        headAgain();
      }
      if (i == table.marked()) {
        flow.shade(Flow.leftPt(), widePt(), highPt(row));
      }
      row(Tags.under(element, "TR"), row);
    }
    flow.space(6);
  }

  private double headPt() {
    double most = 0;
    for (int i = 0; i < table.head().size(); i++) {
      most = Math.max(most, flow.highPt(Type.HEAD, wides[i], table.head().get(i)));
    }
    return most + 2 * PAD_PT;
  }

  private double highPt(List<String> row) {
    double most = 0;
    for (int i = 0; i < row.size(); i++) {
      most = Math.max(most, flow.highPt(type(i), wides[i], row.get(i)));
    }
    return most + 2 * PAD_PT;
  }

  /** The first cell of a row says what the row is of. */
  private static Type type(int column) {
    return column == 0 ? Type.HEAD : Type.CELL;
  }

  private double leftPt(int column) {
    return Flow.leftPt() + IntStream.range(0, column).mapToDouble(i -> wides[i] + BETWEEN_PT).sum();
  }

  private double widePt() {
    return leftPt(wides.length) - BETWEEN_PT - Flow.leftPt();
  }

  private void head(PDStructureElement row) {
    for (int i = 0; i < table.head().size(); i++) {
      PDStructureElement cell = Tags.under(row, table.head().get(i).isEmpty() ? "TD" : "TH");
      if (!table.head().get(i).isEmpty()) {
        Tags.scope(cell, "Column");
      }
      cell(cell, i, table.head().get(i), Type.HEAD);
    }
    end(headPt());
  }

  private void row(PDStructureElement row, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      boolean head = i == 0 && !cells.get(i).isEmpty();
      PDStructureElement cell = Tags.under(row, head ? "TH" : "TD");
      if (head) {
        Tags.scope(cell, "Row");
      }
      cell(cell, i, cells.get(i), type(i));
    }
    end(highPt(cells));
  }

  private void cell(PDStructureElement cell, int column, String text, Type type) {
    double basePt = flow.downPt() + PAD_PT + type.sizePt();
    for (String line : flow.fonts().lines(text, type, wides[column])) {
      if (!line.isEmpty()) {
        flow.words(cell, type, leftPt(column), basePt, line);
      }
      basePt += type.leadPt();
    }
  }

  /** It was read once, so that it is not read again. */
  private void headAgain() {
    for (int i = 0; i < table.head().size(); i++) {
      double basePt = flow.downPt() + PAD_PT + Type.HEAD.sizePt();
      for (String line : flow.fonts().lines(table.head().get(i), Type.HEAD, wides[i])) {
        double at = basePt;
        double left = leftPt(i);
        flow.artifact(out -> flow.letters(out, Type.HEAD, left, flow.upPt(at), line));
        basePt += Type.HEAD.leadPt();
      }
    }
    end(headPt());
  }

  private void end(double highPt) {
    flow.past(highPt);
    flow.rule(Flow.leftPt(), widePt(), flow.downPt());
  }
}
