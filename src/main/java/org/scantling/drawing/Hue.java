package org.scantling.drawing;

/** The colours of a drawing by name, each on a light ground and on a dark one. */
public enum Hue {
  PAPER("paper", "#fdfcfa", "#171614"),
  INK("ink", "#1c1b19", "#ece8e1"),
  MUTED("muted", "#5f5a52", "#aaa398"),
  TIMBER("timber", "#f2e2c4", "#4a3f2d"),
  GROWN("grown", "#dcb878", "#8a6a34"),
  METAL("metal", "#d5d8da", "#4b5054"),
  SOIL("soil", "#ece6da", "#29261f"),
  GRAVEL("gravel", "#d9d2c4", "#3d382f"),
  CONCRETE("concrete", "#e2e1de", "#34353a"),
  PERSON("person", "#c9c3b8", "#4b4741"),
  FROST("frost", "#1f5f86", "#8cc4e6");

  private final String word;
  private final String light;
  private final String dark;

  Hue(String word, String light, String dark) {
    this.word = word;
    this.light = light;
    this.dark = dark;
  }

  /** As styles call it. */
  public String word() {
    return word;
  }

  /** Red, green and blue in hexadecimal digits, as paper has it. */
  public String light() {
    return light;
  }

  /** The same on a dark ground. */
  public String dark() {
    return dark;
  }
}
