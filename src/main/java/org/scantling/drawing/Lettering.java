package org.scantling.drawing;

/** Kinds of writing on a sheet, as high on the screen whatever the scale of the drawing. */
public enum Lettering {
  /** What a drawing is of. */
  HEAD("head", 15, true, Hue.INK),
  /** A sentence beside the drawing. */
  NOTE("note", 12.5, false, Hue.INK),
  /** The name of a post, a piece or a place. */
  MARK("mark", 12, true, Hue.INK),
  /** The figure of a dimension. */
  FIGURE("figure", 11.5, false, Hue.INK),
  /** The word at the frost line, in its hue. */
  FROST("frost-word", 11.5, false, Hue.FROST);

  private final String word;
  private final double sizePx;
  private final boolean bold;
  private final Hue hue;

  Lettering(String word, double sizePx, boolean bold, Hue hue) {
    this.word = word;
    this.sizePx = sizePx;
    this.bold = bold;
    this.hue = hue;
  }

  String word() {
    return word;
  }

  public double sizePx() {
    return sizePx;
  }

  public boolean bold() {
    return bold;
  }

  public Hue hue() {
    return hue;
  }
}
