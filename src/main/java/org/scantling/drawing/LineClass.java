package org.scantling.drawing;

import java.util.List;
import java.util.stream.Stream;

/** How a line is drawn; the widths are those of building drawings. */
public enum LineClass {
  /** The edge of what the view cuts through. */
  CUT("cut", Hue.INK, 1.9),
  /** The edge of what is larger than it was. */
  GROWN("grown", Hue.INK, 1.9),
  VISIBLE("visible", Hue.INK, 1.2),
  /** What is drawn for help: dimension and witness lines, diagonals of end grain, leaders. */
  THIN("thin", Hue.MUTED, 0.6),
  /** The stroke across the end of a dimension. */
  TICK("tick", Hue.INK, 1.3),
  /** What lies behind or beneath. */
  HIDDEN("hidden", Hue.MUTED, 0.8, "5 3"),
  CENTRE("centre", Hue.MUTED, 0.6, "12 3 2 3"),
  GROUND("ground", Hue.INK, 2),
  FROST("frost", Hue.FROST, 1.1, "9 4 2 4"),
  /** No line at all. */
  NONE("none", Hue.INK, 0);

  private final String word;
  private final Hue hue;
  private final double widthPx;
  private final String dashesPx;

  LineClass(String word, Hue hue, double widthPx) {
    this(word, hue, widthPx, "");
  }

  LineClass(String word, Hue hue, double widthPx, String dashesPx) {
    this.word = word;
    this.hue = hue;
    this.widthPx = widthPx;
    this.dashesPx = dashesPx;
  }

  /** As the sheet's style calls it. */
  String word() {
    return word;
  }

  public Hue hue() {
    return hue;
  }

  /** 0 where there is none. */
  public double widthPx() {
    return widthPx;
  }

  /** Strokes and gaps by turns; none for a whole line. */
  public List<Integer> dashesPx() {
    return dashesPx.isEmpty()
        ? List.of()
        : Stream.of(dashesPx.split(" ")).map(Integer::valueOf).toList();
  }
}
