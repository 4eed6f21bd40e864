package org.scantling.drawing;

/** What an area is filled with; each has a light and a dark value in the sheet's style. */
enum Tone {
  NONE("clear"),
  PAPER("paper"),
  TIMBER("timber"),
  GROWN("grown-timber"),
  METAL("metal"),
  SOIL("soil"),
  GRAVEL("gravel"),
  CONCRETE("concrete"),
  PERSON("person"),
  INK("inked");

  private final String word;

  Tone(String word) {
    this.word = word;
  }

  /** As the sheet's style calls it. */
  String word() {
    return word;
  }
}
