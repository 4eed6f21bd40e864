package org.scantling.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** No two pieces of a list are in the same place, but for what is let in. */
final class Apart {
  private static final double TAPE_IN = 1.0 / 8;

  private final Built built;
  private final Pieces pieces;

  Apart(Built built) {
    this.built = built;
    this.pieces = Pieces.of(built);
  }

  void check() {
    within("header", "header", 0);
    within("header", "crossbeam", built.geometry().crossbeams().notchIn());
    within("header", "post", built.geometry().headers().notchIn());
    within("crossbeam", "crossbeam", 0);
    within("brace", "crossbeam", 0);
    within("brace", "brace", 0);
    within("brace", "post", 0);
    within("brace", "picket", 0);
  }

  /** Along the walk a brace lies beside the header; one across it may have to be let in. */
  void bracesBesideHeaders() {
    for (Solid brace : solids("brace", true)) {
      for (Solid header : solids("header", false)) {
        apart(brace, header, 0);
      }
    }
  }

  private void within(String one, String other, double letIn) {
    List<Solid> these = solids(one, false);
    List<Solid> those = one.equals(other) ? these : solids(other, false);
    for (int i = 0; i < these.size(); i++) {
      for (int j = one.equals(other) ? i + 1 : 0; j < those.size(); j++) {
        apart(these.get(i), those.get(j), letIn);
      }
    }
  }

  private static void apart(Solid one, Solid other, double letIn) {
    assertThat(one.intoIn(other))
        .as("%s goes into %s", one.name(), other.name())
        .isLessThanOrEqualTo(letIn + TAPE_IN);
  }

  private List<Solid> solids(String role, boolean alongOnly) {
    List<Solid> solids = new ArrayList<>();
    for (Piece piece : pieces.of(role)) {
      for (Place place : piece.places()) {
        boolean along = place.first().acrossIn() == place.last().acrossIn();
        if (along || !alongOnly) {
          solids.add(Solid.of(piece, place, built.top().headerFallRatio()));
        }
      }
    }
    return solids;
  }
}
