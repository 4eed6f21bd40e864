package org.scantling.drawing;

/** Which point of a text lies on its place. */
public enum Anchor {
  START("start"),
  MIDDLE("middle"),
  END("end");

  private final String word;

  Anchor(String word) {
    this.word = word;
  }

  /** As the file format calls it. */
  String word() {
    return word;
  }

  /** How much of the text lies before its place. */
  public double beforeRatio() {
    return ordinal() / 2.0;
  }
}
