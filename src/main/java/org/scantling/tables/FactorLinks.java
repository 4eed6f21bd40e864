package org.scantling.tables;

import java.util.Optional;

/** What a house's adjustment factors have to do with each other and with the sizes sold. */
final class FactorLinks {
  private static final String FULL = ".full";
  private static final String LEAST = ".least";

  private final Tables tables;
  private final Tables ours;
  private final HouseLines lines;

  private FactorLinks(Tables tables, Tables ours, HouseLines lines) {
    this.tables = tables;
    this.ours = ours;
    this.lines = lines;
  }

  /**
   * @param tables with the house's rows
   * @param ours without them
   * @throws TableException at the row of the house that breaks a link
   */
  static void check(Tables tables, Tables ours, HouseLines lines) {
    FactorLinks links = new FactorLinks(tables, ours, lines);
    links.kinds();
    links.sizes();
    links.distances();
  }

  /** A house may give another factor, not make it one of something else. */
  private void kinds() {
    for (AdjustmentRow each : tables.adjustmentFactors().rows()) {
      ours.adjustmentFactors().find(each.id()).ifPresent(was -> sameKind(was, each));
    }
  }

  private void sameKind(AdjustmentRow was, AdjustmentRow now) {
    same(now.id(), "factor", was.factor(), now.factor());
    same(now.id(), "property", was.property(), now.property());
    same(now.id(), "member_class", was.memberClass(), now.memberClass());
  }

  private void same(String id, String column, String was, String now) {
    if (!was.equals(now)) {
      throw lines.refuse(
          TableFile.ADJUSTMENT_FACTORS,
          id,
          column,
          now,
          RefusalWords.say("factors.kind", "was", was));
    }
  }

  /** No size goes without. */
  private void sizes() {
    for (SizeRow size : tables.sizes().rows()) {
      Optional<String> missing = tables.factors().missing(size);
      if (missing.isPresent()) {
        throw lines.refuse(
            TableFile.ADJUSTMENT_FACTORS,
            "factor",
            missing.get(),
            RefusalWords.say("factors.size"));
      }
    }
  }

  /** A distance at which a fastener holds in full is no less than the least that it needs. */
  private void distances() {
    for (AdjustmentRow full : tables.adjustmentFactors().rows()) {
      if (full.id().endsWith(FULL)) {
        String id = full.id().substring(0, full.id().length() - FULL.length()) + LEAST;
        tables.adjustmentFactors().find(id).ifPresent(least -> within(least, full));
      }
    }
  }

  private void within(AdjustmentRow least, AdjustmentRow full) {
    if (!(full.amount() > 0 && full.amount() >= least.amount())) {
      boolean greater = !lines.has(TableFile.ADJUSTMENT_FACTORS, full.id());
      throw greater
          ? lines.refuse(
              TableFile.ADJUSTMENT_FACTORS,
              least.id(),
              "value",
              Double.toString(least.amount()),
              RefusalWords.say(
                  "factors.most", "amount", Double.toString(full.amount()), "full", full.id()))
          : lines.refuse(
              TableFile.ADJUSTMENT_FACTORS,
              full.id(),
              "value",
              Double.toString(full.amount()),
              RefusalWords.say(
                  "factors.least", "amount", Double.toString(least.amount()), "least", least.id()));
    }
  }
}
