package org.scantling.drawing;

/** Kinds of writing on a sheet, as high on the screen whatever the scale of the drawing. */
enum Lettering {
  /** What a drawing is of. */
  HEAD("head", 15, true),
  /** A sentence beside the drawing. */
  NOTE("note", 12.5, false),
  /** The name of a post, a piece or a place. */
  MARK("mark", 12, true),
  /** The figure of a dimension. */
  FIGURE("figure", 11.5, false),
  /** The word at the frost line, in its hue. */
  FROST("frost-word", 11.5, false);

  private final String word;
  private final double sizePx;
  private final boolean bold;

  Lettering(String word, double sizePx, boolean bold) {
    this.word = word;
    this.sizePx = sizePx;
    this.bold = bold;
  }

  String word() {
    return word;
  }

  double sizePx() {
    return sizePx;
  }

  boolean bold() {
    return bold;
  }
}
