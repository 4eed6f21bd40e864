package org.scantling.cli;

import java.util.Optional;
import org.scantling.answers.BaseRecord;
import org.scantling.answers.Stock;
import org.scantling.design.Geometry;
import org.scantling.design.Site;
import org.scantling.drawing.Drawings;
import org.scantling.print.PrintOptions;
import org.scantling.reasons.WholeOptions;
import org.scantling.sheets.SheetSource;
import org.scantling.tables.Tables;
import org.scantling.words.Words;

/** Puts together what sheets are made of. */
final class SheetSources {
  private SheetSources() {}

  /**
   * @param ways to build it, where they were asked for
   */
  static SheetSource of(
      CostedProposal costed, Optional<WholeOptions> ways, Words words, PrintOptions how) {
    Site site = costed.intake().site();
    Tables tables = costed.by().tables();
    Drawings drawings =
        Drawings.of(
            costed.lists(), costed.proposal(), site, base(site, tables), tables, how.units());
    return new SheetSource(
        costed.proposal(),
        words,
        how,
        costed.lists(),
        drawings,
        costed.estimate(),
        ways,
        costed::near,
        Version.number());
  }

  /** Where everything stands in the base. */
  private static Geometry base(Site site, Tables tables) {
    String market = tables.market(site.materials().market());
    double endMarginIn = tables.thumb("crossbeam.end-margin").amount();
    return new BaseRecord(site.base(), new Stock(tables, market), endMarginIn).geometry();
  }
}
