package org.scantling.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * One drawing as it is published.
 *
 * @param name of its file, without the ending
 * @param title what it is of
 * @param says what a person who sees it learns
 * @param scalePxPerIn of everything drawn on it
 * @param inks all that is drawn, the writing with it
 */
record Sheet(String name, String title, String says, double scalePxPerIn, List<Ink> inks) {
  private static final double MARGIN_PX = 20;

  Sheet {
    inks = List.copyOf(inks);
  }

  PaperBox edges() {
    List<PaperPoint> reach = new ArrayList<>();
    inks.forEach(each -> reach.addAll(each.reach()));
    return PaperBox.around(reach).grown(MARGIN_PX);
  }
}
