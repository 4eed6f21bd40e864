package org.scantling.sheets;

import org.scantling.quantity.UnitSystem;

/** What a sheet is printed on. */
public enum Paper {
  LETTER("letter"),
  A4("A4");

  private final String word;

  Paper(String word) {
    this.word = word;
  }

  /** As a style sheet calls it. */
  String word() {
    return word;
  }

  static Paper of(UnitSystem units) {
    return units == UnitSystem.METRIC ? A4 : LETTER;
  }
}
