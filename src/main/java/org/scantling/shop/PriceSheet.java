package org.scantling.shop;

import java.util.List;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;
import org.scantling.tables.PricedItem;
import org.scantling.tables.PricedItems;
import org.scantling.tables.Tables;

/** A list of prices to fill in, all its prices empty: what has none is not priced. */
public final class PriceSheet {
  private static final Sayings SAYINGS = EstimateWords.SAYINGS;
  private static final List<PricedItem> ON_SUMS =
      List.of(PricedItem.MATERIALS_TAX, PricedItem.MARKUP, PricedItem.TAX);

  private final CsvTable table = new CsvTable("item", "unit", "price", "currency", "note");

  private PriceSheet() {}

  /** What one job pays for, but for what the yard's list has a price for already. */
  public static String of(Estimate estimate) {
    PriceSheet sheet = new PriceSheet();
    for (CostLine line : estimate.cost().unpriced()) {
      sheet.row(line.key(), line.unit(), line.what());
    }
    for (PricedItem item : ON_SUMS) {
      sheet.row(item.word(), PricedItems.PERCENT, SAYINGS.say("sheet." + item.word()));
    }
    return sheet.under(SAYINGS.say("sheet.job", "title", estimate.title()));
  }

  /** Everything that can be priced; of timber one stick of each size stands for all. */
  public static String of(Tables tables) {
    PriceSheet sheet = new PriceSheet();
    PricedItems items = new PricedItems(tables);
    for (String stick : items.sticks()) {
      sheet.row(stick, PricedItems.EACH, SAYINGS.say("sheet.stick"));
    }
    items
        .names()
        .forEach(
            name -> {
              List<String> units = items.units(name);
              String others = String.join(", ", units.subList(1, units.size()));
              sheet.row(
                  name,
                  units.get(0),
                  others.isEmpty() ? "" : SAYINGS.say("sheet.units", "units", others));
            });
    return sheet.under(SAYINGS.say("sheet.all"));
  }

  private void row(String item, String unit, String note) {
    table.row().set("item", item).set("unit", unit).set("note", note);
  }

  private String under(String head) {
    String remarks = head + "\n" + SAYINGS.say("sheet.how") + "\n" + SAYINGS.say("sheet.kinds");
    return remarks.lines().map(line -> "# " + line + "\n").reduce("", String::concat)
        + table.in(UnitSystem.IMPERIAL).text();
  }
}
