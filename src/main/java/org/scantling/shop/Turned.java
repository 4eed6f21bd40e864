package org.scantling.shop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The same piece turned end for end, its top still up: a piece that fits another place when turned
 * has no mark of its own.
 */
@SuppressWarnings("ArgumentSelectionDefectChecker") // first and last change places
final class Turned {
  private Turned() {}

  static Placed of(Placed placed, Tape tape) {
    return new Placed(
        of(placed.shape(), tape), new Place(placed.place().last(), placed.place().first()));
  }

  private static Shape of(Shape shape, Tape tape) {
    List<Recess> recesses = new ArrayList<>();
    for (Recess each : shape.recesses()) {
      recesses.add(
          new Recess(
              each.face(),
              tape.nearest(shape.lengthIn() - each.toIn()),
              each.widthIn(),
              each.depthIn(),
              each.acrossIn(),
              each.seat()));
    }
    Collections.reverse(recesses);
    List<Bore> bores = new ArrayList<>();
    for (Bore each : shape.bores()) {
      double offIn = each.face().equals("top") ? -each.offIn() : each.offIn();
      bores.add(
          new Bore(
              each.face(),
              tape.nearest(shape.lengthIn() - each.atIn()),
              offIn,
              each.diameterIn(),
              each.what()));
    }
    return new Shape(
        shape.role(),
        shape.size(),
        shape.breadthIn(),
        shape.depthIn(),
        shape.lengthIn(),
        shape.spareIn(),
        shape.ends(),
        shape.last(),
        shape.first(),
        recesses,
        BoreOrder.sorted(bores));
  }
}
