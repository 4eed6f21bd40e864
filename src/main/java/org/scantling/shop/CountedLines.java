package org.scantling.shop;

import java.util.Optional;
import java.util.OptionalLong;
import org.scantling.tables.ItemKey;
import org.scantling.tables.PackRow;

/** What is counted and sold in packs: fasteners, wires, cans. */
final class CountedLines {
  private final Built built;

  CountedLines(Built built) {
    this.built = built;
  }

  /**
   * @param unit what is counted
   */
  BuyingLine line(String section, Fixing fixing, String unit) {
    int more = (int) Math.ceil(fixing.count() * built.shop("stock.fastener-spare-share") - 1e-9);
    Optional<PackRow> pack = built.tables().packs().find(fixing.id());
    boolean metric = built.tape() == Tape.MILLIMETRES;
    int inAPack = pack.map(metric ? PackRow::metricCount : PackRow::count).orElse(1);
    return new BuyingLine(
        ItemKey.of(fixing.key()),
        section,
        fixing.name(),
        new BuyingLine.Quantity(fixing.count(), unit),
        new BuyingLine.Quantity(more, unit),
        (fixing.count() + more + inAPack - 1) / inAPack,
        pack.map(metric ? PackRow::metricWords : PackRow::words).orElse("piece"),
        fixing.use(),
        OptionalLong.empty());
  }

  /** Bolts, screws and nails are dipped; parts of a maker's are of coated sheet. */
  BuyingLine steel(Fixing fixing) {
    String what = fixing.rating().isPresent() ? "finish.parts" : "finish.fasteners";
    String row = built.tape() == Tape.MILLIMETRES ? what + "-metric" : what;
    String finish = built.tables().defaults().row(row).word();
    return line("fixings", fixing, "pieces").of(BuyingLine.Kind.steel(finish, fixing.rating()));
  }
}
