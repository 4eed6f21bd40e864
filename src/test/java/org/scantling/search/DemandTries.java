package org.scantling.search;

import java.util.ArrayList;
import java.util.List;
import org.scantling.answers.ResultCache;
import org.scantling.design.Site;
import org.scantling.engine.Engine;
import org.scantling.reasons.Proposal;
import org.scantling.tables.DemandRow;
import org.scantling.tables.Tables;

/** Lets tests of other packages see what a search along the demands would try. */
public final class DemandTries {
  private DemandTries() {}

  /** For each demand the values that are tried, and what giving each up counts. */
  public static List<String> of(Engine engine, Tables tables, Site site, Proposal today) {
    List<String> tries = new ArrayList<>();
    for (DemandRow row : tables.demands().rows()) {
      new DemandScales(tables)
          .of(row, site, today)
          .ifPresent(scale -> tries.add(row.id() + ": " + tries(engine, site, row, scale)));
    }
    return tries;
  }

  private static String tries(Engine engine, Site site, DemandRow row, DemandScale scale) {
    DemandLine line =
        new DemandLine(
            row,
            scale,
            site,
            engine,
            List.of(),
            () -> new ResultCache(ResultCache.Retention.NOTHING));
    StringBuilder tries = new StringBuilder();
    for (int place : scale.samples()) {
      tries.append(scale.value(place));
      if (row.weightRatio().isPresent()) {
        tries.append(" counts ").append(line.shareRatio(place));
      }
    }
    return tries.toString();
  }
}
