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
 * @param notes the sentences under it
 * @param bare what is drawn, with a scale bar, for a page that has heading and notes of its own
 * @param inks all of the sheet, heading and notes with it
 */
public record Sheet(
    String name,
    String title,
    String says,
    double scalePxPerIn,
    List<String> notes,
    List<Ink> bare,
    List<Ink> inks) {
  private static final double MARGIN_PX = 20;
  private static final double BARE_MARGIN_PX = 4;

  public Sheet {
    notes = List.copyOf(notes);
    bare = List.copyOf(bare);
    inks = List.copyOf(inks);
  }

  PaperBox edges() {
    return edges(inks, MARGIN_PX);
  }

  /** The box around what is drawn without heading and notes. */
  public PaperBox bareEdges() {
    return edges(bare, BARE_MARGIN_PX);
  }

  private static PaperBox edges(List<Ink> of, double marginPx) {
    List<PaperPoint> reach = new ArrayList<>();
    of.forEach(each -> reach.addAll(each.reach()));
    return PaperBox.around(reach).grown(marginPx);
  }
}
