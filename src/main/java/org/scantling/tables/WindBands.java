package org.scantling.tables;

/**
 * The bands of a figure of the wind: a house may give other numbers for them, but where each begins
 * and ends stays, for they have to join without a gap.
 */
final class WindBands {
  private static final String SOLID_FROM = "wind.lattice.solid-from";
  private static final String LAST_LATTICE = "wind.lattice.flat.dense";

  private WindBands() {}

  /**
   * @param tables with the house's rows
   * @param ours without them
   * @throws TableException at the row of the house that moves a band
   */
  static void check(Tables tables, Tables ours, HouseLines lines) {
    for (WindRow was : ours.wind().rows()) {
      WindRow now = tables.wind(was.id());
      same(lines, was.id(), "from_ratio", was.fromRatio(), now.fromRatio());
      same(lines, was.id(), "to_ratio", was.toRatio(), now.toRatio());
    }
    double solidFrom = tables.wind(SOLID_FROM).amount();
    double bandsEnd = tables.wind(LAST_LATTICE).toRatio();
    if (Double.compare(solidFrom, bandsEnd) != 0) {
      throw lines.refuse(
          TableFile.WIND,
          SOLID_FROM,
          "value",
          Double.toString(solidFrom),
          RefusalWords.say("wind.bands", "from", Double.toString(bandsEnd)));
    }
  }

  private static void same(HouseLines lines, String id, String column, double was, double now) {
    if (Double.compare(was, now) != 0) {
      throw lines.refuse(
          TableFile.WIND,
          id,
          column,
          Double.toString(now),
          RefusalWords.say("wind.figure", "was", Double.toString(was)));
    }
  }
}
