package org.scantling.pdf;

/** The faces that sheets are set in, all of DejaVu. */
enum Face {
  SERIF("DejaVuSerifCondensed"),
  SERIF_BOLD("DejaVuSerifCondensed-Bold"),
  SANS("DejaVuSansCondensed"),
  SANS_BOLD("DejaVuSansCondensed-Bold"),
  /** As wide as the drawings reckon with. */
  DRAWN("DejaVuSans"),
  DRAWN_BOLD("DejaVuSans-Bold");

  private final String file;

  Face(String file) {
    this.file = file;
  }

  /** Where the library of fonts has it. */
  String file() {
    return "/net/sf/jasperreports/fonts/dejavu/" + file + ".ttf";
  }
}
