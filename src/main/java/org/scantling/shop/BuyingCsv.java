package org.scantling.shop;

import java.util.stream.Stream;
import org.scantling.sayings.Sayings;

/** The buying list as comma-separated text: what to buy, what is spared, how sticks are sawn. */
final class BuyingCsv {
  private static final Sayings SAYINGS = Sayings.of("buying");

  private static final String[] COLUMNS = {
    "section",
    "item",
    "buy",
    "unit",
    "needed",
    "spare",
    "quantity_unit",
    "for",
    "cost",
    "treatment",
    "timber",
    "finish",
    "rated_lift_lb",
    "rated_side_lb",
    "rated_down_lb"
  };
  private static final String KEY = "key";
  private static final String[] PRICED =
      Stream.concat(Stream.of(COLUMNS), Stream.of(KEY)).toArray(String[]::new);

  private final Buying buying;
  private final Said said;
  private final boolean priced;
  private final CsvTable table;

  /**
   * @param priced whether a list says what things cost, by the names of its items
   */
  BuyingCsv(Buying buying, boolean priced, Said said) {
    this.buying = buying;
    this.priced = priced;
    this.said = said;
    this.table = new CsvTable(priced ? PRICED : COLUMNS);
  }

  String text() {
    buying.lines().forEach(this::line);
    buying.savings().forEach(this::spared);
    buying.timber().forEach(this::sawn);
    return table.in(said.units()).text();
  }

  private void line(BuyingLine line) {
    CsvTable.Row row =
        table
            .row()
            .set("section", line.section())
            .set("item", line.item())
            .set("buy", line.bought())
            .set("unit", line.unit())
            .set("needed", line.needed().amount())
            .set("spare", line.spare().amount())
            .set("quantity_unit", line.needed().unit())
            .set("for", line.use())
            .set("treatment", line.kind().treatment())
            .set("timber", line.kind().timber())
            .set("finish", line.kind().finish());
    line.kind()
        .rating()
        .ifPresent(
            rating ->
                row.set("rated_lift_lb", rating.liftLb())
                    .set("rated_side_lb", rating.sideLb())
                    .set("rated_down_lb", rating.downLb()));
    line.cents().ifPresent(cents -> row.set("cost", said.money(cents)));
    if (priced) {
      row.set(KEY, line.key().text());
    }
  }

  private void spared(Saving saving) {
    CsvTable.Row row =
        table
            .row()
            .set("section", "spared")
            .set("item", saving.size())
            .set("needed", saving.lengthIn())
            .set("quantity_unit", "in")
            .set(
                "for",
                SAYINGS.say(
                    "saved.note",
                    "what",
                    saving.what(),
                    "length",
                    said.length(saving.toIn()),
                    "wanted",
                    said.length(saving.fromIn())));
    saving.cents().ifPresent(cents -> row.set("cost", said.money(cents)));
  }

  private void sawn(TimberPlan plan) {
    for (StickCut cut : plan.cuts()) {
      table
          .row()
          .set("section", "sawing")
          .set(
              "item",
              SAYINGS.say(
                  "stick", "stock", plan.stock().called(), "length", said.length(cut.lengthIn())))
          .set("needed", cut.times())
          .set("quantity_unit", "sticks")
          .set("for", String.join(" ", cut.marks()));
    }
  }
}
