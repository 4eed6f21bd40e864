package org.scantling.drawing;

/** How a line is drawn; the widths are those of building drawings. */
enum LineClass {
  /** The edge of what the view cuts through. */
  CUT("cut"),
  /** The edge of what is larger than it was. */
  GROWN("grown"),
  VISIBLE("visible"),
  /** What is drawn for help: dimension and witness lines, diagonals of end grain, leaders. */
  THIN("thin"),
  /** The stroke across the end of a dimension. */
  TICK("tick"),
  /** What lies behind or beneath. */
  HIDDEN("hidden"),
  CENTRE("centre"),
  GROUND("ground"),
  FROST("frost"),
  /** No line at all. */
  NONE("none");

  private final String word;

  LineClass(String word) {
    this.word = word;
  }

  /** As the sheet's style calls it. */
  String word() {
    return word;
  }
}
