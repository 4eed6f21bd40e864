package org.scantling.shop;

import java.util.Comparator;
import java.util.Optional;
import org.scantling.design.Geometry;
import org.scantling.tables.FastenerRow;

/**
 * What holds two crossbeams side by side to each other: nails along both edges, or bolts where no
 * nail reaches far enough into the second.
 */
final class Plies {
  private final Built built;
  private final Geometry.Crossbeams beams;

  Plies(Built built) {
    this.built = built;
    this.beams = built.geometry().crossbeams();
  }

  /** The longest nail that does not come out on the other side; none where it would hold little. */
  Optional<FastenerRow> nail() {
    double reachIn = (1 + built.shop("ply.nail-reach")) * beams.breadthIn();
    return built.tables().fasteners().rows().stream()
        .filter(each -> each.id().startsWith("nail.common."))
        .filter(each -> each.lengthIn() <= beams.breadthAtPostsIn() + 1e-6)
        .max(Comparator.comparingDouble(FastenerRow::lengthIn))
        .filter(each -> each.lengthIn() >= reachIn - 1e-6);
  }

  FastenerRow bolt() {
    return built.tables().fastener(built.tables().defaults().row("ply.bolt").word());
  }

  /** From one to the next along an edge, or along the pair. */
  String apartRow() {
    return nail().isPresent() ? "ply.nail-apart" : "ply.bolt-apart";
  }

  /** Nails along both edges, or bolts in one staggered row. */
  int inAPair() {
    double lengthIn = built.member("crossbeam").lengthIn();
    int inARow = (int) Math.ceil(lengthIn / built.shop(apartRow()) - 1e-9) + 1;
    return nail().isPresent() ? 2 * inARow : inARow;
  }
}
