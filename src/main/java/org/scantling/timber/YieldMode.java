package org.scantling.timber;

/** The ways in which a dowelled joint gives way, with the standard's numerals. */
public enum YieldMode {
  /** The main piece is crushed along the whole fastener. */
  MAIN_CRUSHES("Im"),
  /** The side piece is crushed along the whole fastener. */
  SIDE_CRUSHES("Is"),
  /** The fastener stays straight and tilts in both pieces. */
  TILTS("II"),
  /** The fastener bends once, in the side piece's plane, and tilts in the main piece. */
  BENDS_TILTING_IN_MAIN("IIIm"),
  /** The fastener bends once, in the main piece, and tilts in the side piece. */
  BENDS_TILTING_IN_SIDE("IIIs"),
  /** The fastener bends twice. */
  BENDS_TWICE("IV");

  private final String numeral;

  YieldMode(String numeral) {
    this.numeral = numeral;
  }

  /** The standard's numeral, such as IIIs. */
  public String numeral() {
    return numeral;
  }
}
