package org.scantling.pdf;

import org.scantling.drawing.Hue;

/**
 * How something is set.
 *
 * @param sizePt of the letters
 * @param leadPt from line to line
 */
record Type(Face face, double sizePt, double leadPt, Hue hue) {
  static final Type TITLE = new Type(Face.SERIF_BOLD, 19, 23, Hue.INK);
  static final Type SECTION = new Type(Face.SERIF_BOLD, 13.5, 17, Hue.INK);
  static final Type UNDER = new Type(Face.SANS_BOLD, 10, 13, Hue.INK);
  static final Type ANSWER = new Type(Face.SERIF, 12.5, 17, Hue.INK);
  static final Type TEXT = new Type(Face.SERIF, 10, 14, Hue.INK);
  static final Type LEAD = new Type(Face.SANS_BOLD, 9, 14, Hue.INK);
  static final Type SMALL = new Type(Face.SANS, 8.5, 11.5, Hue.MUTED);
  static final Type CELL = new Type(Face.SANS, 8.5, 11, Hue.INK);
  static final Type HEAD = new Type(Face.SANS_BOLD, 8.5, 11, Hue.INK);
  static final Type BIG = new Type(Face.SANS_BOLD, 11, 14, Hue.INK);
  static final Type FOOT = new Type(Face.SANS, 7.5, 9, Hue.MUTED);
}
