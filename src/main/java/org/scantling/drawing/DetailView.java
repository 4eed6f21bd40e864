package org.scantling.drawing;

import java.util.List;

/** A joint or a place as it is seen from near by. */
interface DetailView {
  /** Width of all that is drawn of it, without its dimensions. */
  double wideIn();

  /**
   * Draws it.
   *
   * @param pxIn inches of the structure on one px of the sheet
   */
  void draw(Scene scene, double pxIn);

  /** Sentences that say what is seen. */
  List<String> notes();
}
