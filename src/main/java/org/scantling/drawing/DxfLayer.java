package org.scantling.drawing;

import java.util.List;
import java.util.Locale;

/**
 * The layers of a drawing for exchange that are not those of pieces, each with its colour and kind
 * of line.
 */
enum DxfLayer {
  VISIBLE(7, "CONTINUOUS"),
  CUT(7, "CONTINUOUS"),
  THIN(8, "CONTINUOUS"),
  HIDDEN(8, "DASHED"),
  CENTER(8, "CENTER"),
  GROUND(7, "CONTINUOUS"),
  SOIL(42, "CONTINUOUS"),
  GRAVEL(42, "CONTINUOUS"),
  CONCRETE(9, "CONTINUOUS"),
  METAL(9, "CONTINUOUS"),
  FROST(5, "DASHDOT"),
  PERSON(8, "CONTINUOUS"),
  DIMENSIONS(1, "CONTINUOUS"),
  TEXT(7, "CONTINUOUS");

  /** Colour and line of the layer of a role. */
  static final int PIECE_COLOUR = 30;

  static final String WHOLE_LINE = "CONTINUOUS";

  private final int colour;
  private final String line;

  DxfLayer(int colour, String line) {
    this.colour = colour;
    this.line = line;
  }

  /** By the number that programs for drawing have for it. */
  int colour() {
    return colour;
  }

  String line() {
    return line;
  }

  /** What a stroke or an area that is no piece belongs to. */
  static DxfLayer of(Tone tone, LineClass line) {
    return switch (tone) {
      case SOIL -> SOIL;
      case GRAVEL -> GRAVEL;
      case CONCRETE -> CONCRETE;
      case METAL -> METAL;
      case PERSON -> PERSON;
      default -> of(line);
    };
  }

  private static DxfLayer of(LineClass line) {
    return switch (line) {
      case CUT, GROWN -> CUT;
      case VISIBLE, NONE -> VISIBLE;
      case THIN -> THIN;
      case TICK -> DIMENSIONS;
      case HIDDEN -> HIDDEN;
      case CENTRE -> CENTER;
      case GROUND -> GROUND;
      case FROST -> FROST;
    };
  }

  /** The layer of the pieces of a role. */
  static String of(String role) {
    return role.toUpperCase(Locale.ROOT);
  }

  /**
   * A kind of line.
   *
   * @param strokes lengths by turns, a gap negative, in inches on a drawing at 1:24
   */
  record Pattern(String name, String says, List<Double> strokes) {
    static final List<Pattern> ALL =
        List.of(
            new Pattern("CONTINUOUS", "Solid line", List.of()),
            new Pattern("DASHED", "__ __ __", List.of(2.0, -1.0)),
            new Pattern("CENTER", "____ _ ____", List.of(5.0, -1.0, 1.0, -1.0)),
            new Pattern("DASHDOT", "__ . __ . ", List.of(3.0, -1.0, 0.5, -1.0)));
  }
}
