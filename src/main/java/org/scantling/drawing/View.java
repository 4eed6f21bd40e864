package org.scantling.drawing;

/** The drawings of a proposal by name. */
public enum View {
  SET_OUT("set-out"),
  SIDE("side"),
  END("end"),
  CANOPY("canopy"),
  THEN_AND_NOW("then-and-now");

  private final String word;

  View(String word) {
    this.word = word;
  }

  /** The name of its file, without the ending. */
  public String word() {
    return word;
  }
}
