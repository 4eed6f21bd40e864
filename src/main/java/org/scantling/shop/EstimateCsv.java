package org.scantling.shop;

import java.math.BigDecimal;
import java.util.Optional;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;

/** The estimate as comma-separated text; the client's has no more than the client's page. */
final class EstimateCsv {
  private static final Sayings SAYINGS = EstimateWords.SAYINGS;

  private final Estimate estimate;
  private final Cost cost;
  private final CsvTable table =
      new CsvTable("part", "item", "what", "quantity", "unit", "price", "cost", "currency");

  EstimateCsv(Estimate estimate) {
    this.estimate = estimate;
    this.cost = estimate.cost();
  }

  String builder() {
    for (CostLine line : cost.lines()) {
      CsvTable.Row row =
          table
              .row()
              .set("part", line.part())
              .set("item", line.key())
              .set("what", line.what())
              .set("quantity", EstimateWords.quantity(line.quantity()))
              .set("unit", line.unit());
      line.price().ifPresent(price -> row.set("price", EstimateWords.price(price)));
      line.amount().ifPresent(amount -> money(row, amount));
    }
    for (Task task : estimate.work().tasks()) {
      hours(task.id(), SAYINGS.say("task." + task.id()), task.hours());
    }
    sum("materials", cost.sum(CostLine::goods), Optional.empty());
    sum("materials-tax", cost.onMaterials(), cost.materialsTax());
    sum("labor", cost.sum(each -> each.part().equals("labor")), Optional.empty());
    sum("around", cost.sum(each -> each.part().equals("around")), Optional.empty());
    sum("markup", cost.markedUp(), cost.markup());
    client();
    return table.in(UnitSystem.IMPERIAL).text();
  }

  String client() {
    cost.tax()
        .ifPresent(
            percent -> {
              sum("before-tax", cost.beforeTax(), Optional.empty());
              sum("tax", cost.onAll(), cost.tax());
            });
    if (cost.priced()) {
      sum("total", cost.total(), Optional.empty());
    }
    hours("hours", SAYINGS.say("together"), estimate.work().hours());
    for (String each : new EstimateWords(cost).leftOut()) {
      table.row().set("part", "without").set("what", each);
    }
    return table.in(UnitSystem.IMPERIAL).text();
  }

  private void hours(String item, String what, BigDecimal hours) {
    table
        .row()
        .set("part", "hours")
        .set("item", item)
        .set("what", what)
        .set("quantity", EstimateWords.quantity(hours))
        .set("unit", "hour");
  }

  private void sum(String item, BigDecimal amount, Optional<BigDecimal> percent) {
    CsvTable.Row row = table.row().set("part", "sum").set("item", item);
    percent.ifPresent(
        each -> row.set("quantity", EstimateWords.quantity(each)).set("unit", "percent"));
    money(row, amount);
  }

  private void money(CsvTable.Row row, BigDecimal amount) {
    row.set("cost", amount.toPlainString()).set("currency", cost.currency());
  }
}
