package org.scantling.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table in columns as wide as they need; the last ones share what is left and wrap; closer where
 * even that is too wide.
 */
final class GridText {
  private static final int GAP = 2;

  private final List<List<String>> rows;
  private final int[] widths;
  private final int gap;

  private GridText(List<List<String>> rows, int width) {
    this.rows = rows;
    int[] wide = widths(rows, width, GAP);
    this.gap = IntStream.of(wide).sum() + GAP * (wide.length - 1) > width ? 1 : GAP;
    this.widths = gap == GAP ? wide : widths(rows, width, gap);
  }

  static List<String> lines(List<List<String>> rows, int width) {
    GridText text = new GridText(rows, width);
    List<String> lines = new ArrayList<>();
    text.rows.forEach(row -> lines.addAll(text.lines(row)));
    return lines;
  }

  /** Natural widths, cut from the widest column that has words to break until the row fits. */
  private static int[] widths(List<List<String>> rows, int width, int gap) {
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    int[] least = new int[columns];
    for (List<String> row : rows) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
        for (String word : Wrap.lines(row.get(i), "", "", 1)) {
          least[i] = Math.max(least[i], word.length());
        }
      }
    }
    int over = IntStream.of(widths).sum() + gap * (columns - 1) - width;
    for (int widest = widest(widths, least); over > 0 && widest >= 0; over--) {
      widths[widest]--;
      widest = widest(widths, least);
    }
    return widths;
  }

  private List<String> lines(List<String> row) {
    List<List<String>> cells = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < row.size(); i++) {
      List<String> cell = Wrap.lines(row.get(i), "", "", widths[i]);
      cells.add(cell);
      height = Math.max(height, cell.size());
    }
    List<String> lines = new ArrayList<>();
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < row.size(); i++) {
        String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
        text.append(cell).append(" ".repeat(Math.max(0, widths[i] - cell.length()) + gap));
      }
      lines.add(text.toString().stripTrailing());
    }
    return lines;
  }

  /** The widest column that can still give, or -1. */
  private static int widest(int[] widths, int[] least) {
    int widest = -1;
    for (int i = 0; i < widths.length; i++) {
      if (widths[i] > least[i] && (widest < 0 || widths[i] > widths[widest])) {
        widest = i;
      }
    }
    return widest;
  }
}
