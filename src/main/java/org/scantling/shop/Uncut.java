package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Pieces whose stick is a hair longer than they are: no saw takes off so little. */
final class Uncut {
  /** Their ends run out past a support, so that nothing is in their way. */
  private static final Set<String> FREE_ENDED = Set.of("header", "crossbeam");

  private final Lists lists;
  private final Said said;

  Uncut(Lists lists, Said said) {
    this.lists = lists;
    this.said = said;
  }

  /** What is done with each of them. */
  List<String> told() {
    List<String> told = new ArrayList<>();
    for (TimberPlan plan : lists.buying().timber()) {
      for (StickCut cut : plan.cuts()) {
        if (cut.ends() == StickCut.Ends.NEITHER) {
          piece(marked(cut.marks().get(0)), cut.lengthIn(), told);
        }
      }
    }
    return told;
  }

  private void piece(Piece piece, double stickIn, List<String> told) {
    Shape shape = piece.shape();
    String length = said.length(shape.lengthIn());
    boolean trimmedLater = shape.spareIn() > 0;
    if (!trimmedLater && !length.equals(said.length(stickIn)) && stickIn > shape.lengthIn()) {
      told.add(
          piece.mark()
              + " is "
              + length
              + " out of a stick of "
              + said.length(stickIn)
              + ", and no saw takes off so little: "
              + (freeEnded(piece)
                  ? "leave it as it comes, measure from the "
                      + shape.ends().first()
                      + ", and let the rest stand over at the "
                      + shape.ends().last()
                      + "."
                  : "take it off with a plane."));
    }
  }

  private Piece marked(String mark) {
    return lists.pieces().all().stream()
        .filter(each -> each.mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private boolean freeEnded(Piece piece) {
    return FREE_ENDED.contains(piece.shape().role()) && lists.endsFree(piece);
  }
}
