package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.scantling.sayings.Sayings;

/** Pieces whose stick is a hair longer than they are: no saw takes off so little. */
final class Uncut {
  private static final Sayings SAYINGS = Sayings.of("cut-list");

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
    for (TimberPlan plan : lists.timber()) {
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
    String stick = said.length(stickIn);
    boolean trimmedLater = shape.spareIn() > 0;
    if (!trimmedLater && !length.equals(stick) && stickIn > shape.lengthIn()) {
      told.add(
          SAYINGS.say(
              freeEnded(piece) ? "uncut.left" : "uncut.planed",
              "mark",
              piece.mark(),
              "length",
              length,
              "stick",
              stick,
              "first",
              shape.ends().first(),
              "last",
              shape.ends().last()));
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
