package org.scantling.drawing;

import java.util.Optional;

/** What an area is filled with; each has a light and a dark value in the sheet's style. */
public enum Tone {
  NONE("clear", Optional.empty()),
  PAPER("paper", Optional.of(Hue.PAPER)),
  TIMBER("timber", Optional.of(Hue.TIMBER)),
  GROWN("grown-timber", Optional.of(Hue.GROWN)),
  METAL("metal", Optional.of(Hue.METAL)),
  SOIL("soil", Optional.of(Hue.SOIL)),
  GRAVEL("gravel", Optional.of(Hue.GRAVEL)),
  CONCRETE("concrete", Optional.of(Hue.CONCRETE)),
  PERSON("person", Optional.of(Hue.PERSON)),
  INK("inked", Optional.of(Hue.INK));

  private final String word;
  private final Optional<Hue> hue;

  Tone(String word, Optional<Hue> hue) {
    this.word = word;
    this.hue = hue;
  }

  /** As the sheet's style calls it. */
  String word() {
    return word;
  }

  /** Nothing where nothing is filled. */
  public Optional<Hue> hue() {
    return hue;
  }
}
