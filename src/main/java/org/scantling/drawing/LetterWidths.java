package org.scantling.drawing;

/**
 * How wide a line of writing comes out, rather too wide than too narrow: the advance widths of
 * DejaVu Sans, which is among the widest of the faces that a sheet may be shown in.
 *
 * <p>Source: the font's own metrics, in thousandths of its size.
 */
final class LetterWidths {
  private static final int FIRST = ' ';
  private static final int WIDEST = 1100;
  private static final double BOLD_FACTOR = 1.2;
  private static final double ASCENT_RATIO = 0.93;
  private static final double DESCENT_RATIO = 0.24;

  private static final int[] THOUSANDTHS = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337,
    636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531,
    1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787,
    603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500,
    500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612,
    635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838
  };

  private LetterWidths() {}

  static double widthPx(String words, Lettering lettering) {
    double thousandths = words.codePoints().mapToDouble(LetterWidths::thousandths).sum();
    double factor = lettering.bold() ? BOLD_FACTOR : 1;
    return thousandths / 1000 * factor * lettering.sizePx();
  }

  /** As much of it as fits. */
  static String shortened(String words, Lettering lettering, double roomPx) {
    String rest = words;
    while (widthPx(rest, lettering) > roomPx) {
      rest = rest.substring(0, rest.offsetByCodePoints(rest.length(), -1));
    }
    return rest;
  }

  private static double thousandths(int letter) {
    int place = letter - FIRST;
    return place >= 0 && place < THOUSANDTHS.length ? THOUSANDTHS[place] : WIDEST;
  }

  /** Above the line that letters stand on. */
  static double ascentPx(Lettering lettering) {
    return ASCENT_RATIO * lettering.sizePx();
  }

  /** Below the line that letters stand on. */
  static double descentPx(Lettering lettering) {
    return DESCENT_RATIO * lettering.sizePx();
  }
}
