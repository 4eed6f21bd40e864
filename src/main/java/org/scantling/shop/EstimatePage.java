package org.scantling.shop;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scantling.print.Block;
import org.scantling.print.Page;
import org.scantling.quantity.UnitSystem;
import org.scantling.sayings.Sayings;
import org.scantling.tables.PricedItems;

/** The estimate for the builder, with all that it is made of. */
final class EstimatePage {
  private static final Sayings SAYINGS = EstimateWords.SAYINGS;

  /** In this order. */
  private static final List<String> PARTS =
      List.of("timber", "fixings", "ground", "work", "climbers", "plants", "labor", "around");

  private final Estimate estimate;
  private final Cost cost;
  private final EstimateWords words;
  private final Said said;
  private final Page page = new Page();

  EstimatePage(Estimate estimate, Said said) {
    this.estimate = estimate;
    this.cost = estimate.cost();
    this.words = new EstimateWords(cost);
    this.said = said;
  }

  Page page() {
    page.title(SAYINGS.say("title", "title", estimate.title()));
    page.paragraph(new CostBlock(estimate).total());
    parts();
    work();
    sums();
    List<String> out = words.leftOut();
    if (!out.isEmpty()) {
      page.heading(SAYINGS.say("left-out")).add(Block.Items.of(unpriced()));
    }
    return page.paragraph(
        SAYINGS.say(
            "rounding",
            "volume",
            EstimateWords.quantity(estimate.rounding().volume()),
            "hours",
            EstimateWords.quantity(estimate.rounding().hours())));
  }

  /** With the names by which a price list has them. */
  private List<String> unpriced() {
    List<String> all = new ArrayList<>();
    for (CostLine line : cost.unpriced()) {
      String saying = line.unit().equals(PricedItems.EACH) ? "keyed.each" : "keyed";
      all.add(SAYINGS.say(saying, "what", line.what(), "key", line.key(), "unit", line.unit()));
    }
    if (cost.untaxed()) {
      all.add(SAYINGS.say("tax.keyed"));
    }
    return all;
  }

  private void parts() {
    Map<String, List<List<String>>> parts = new LinkedHashMap<>();
    PARTS.forEach(part -> parts.put(part, new ArrayList<>()));
    for (CostLine line : cost.lines()) {
      if (line.price().isPresent()) {
        parts.computeIfAbsent(line.part(), part -> new ArrayList<>()).add(row(line));
      }
    }
    parts.values().removeIf(List::isEmpty);
    parts.forEach(
        (part, rows) -> {
          rows.add(0, ColumnHeads.of(SAYINGS, "what", "quantity", "price", "cost"));
          page.heading(SAYINGS.say("part." + part)).add(new Block.Grid(rows));
        });
  }

  private static List<String> row(CostLine line) {
    return List.of(
        line.what(),
        EstimateWords.quantity(line),
        line.price().map(EstimateWords::price).orElse(""),
        line.amount().map(EstimateWords::price).orElse(""));
  }

  /** Each task with the rows that it follows from. */
  private void work() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ColumnHeads.of(SAYINGS, "task", "hours", "people", "from"));
    for (Task task : estimate.work().tasks()) {
      rows.add(
          List.of(
              SAYINGS.say("task." + task.id()),
              EstimateWords.hours(task.hours()),
              people(task.hands()),
              task.parts().stream().map(this::from).collect(Collectors.joining("; "))));
    }
    rows.add(
        List.of(SAYINGS.say("together"), EstimateWords.hours(estimate.work().hours()), "", ""));
    page.heading(SAYINGS.say("work")).add(new Block.Grid(rows));
    page.paragraph(SAYINGS.say("work.source"));
  }

  static String people(int hands) {
    return hands > 2 ? SAYINGS.say("people.more") : Integer.toString(hands);
  }

  private String from(Task.Part part) {
    double eachMinutes = part.row().eachMinutes();
    if (!part.row().unit().equals("cu ft")) {
      return from("from", Said.decimals(part.amount(), 1), Said.decimals(eachMinutes, 2), part);
    }
    return said.units() == UnitSystem.IMPERIAL
        ? from("from.cu-ft", said.volume(part.amount()), Said.decimals(eachMinutes, 2), part)
        : from("from.m3", said.volume(part.amount()), Said.aCubicMetre(eachMinutes), part);
  }

  private static String from(String saying, String count, String minutes, Task.Part part) {
    return SAYINGS.say(saying, "count", count, "minutes", minutes, "row", part.row().id());
  }

  private void sums() {
    if (!cost.priced()) {
      return;
    }
    List<Block.Item> items = new ArrayList<>();
    items.add(item("sum.materials", cost.sum(CostLine::goods)));
    percent(items, "sum.materials-tax", cost.materialsTax(), cost.onMaterials());
    items.add(item("sum.labor", cost.sum(each -> each.part().equals("labor"))));
    items.add(item("sum.around", cost.sum(each -> each.part().equals("around"))));
    percent(items, "sum.markup", cost.markup(), cost.markedUp());
    percent(items, "sum.tax", cost.tax(), cost.onAll());
    items.add(item("sum.total", cost.total()));
    page.heading(SAYINGS.say("sums")).items(items);
  }

  private Block.Item item(String sum, BigDecimal amount) {
    return new Block.Item(SAYINGS.say(sum), words.money(amount));
  }

  private void percent(
      List<Block.Item> items, String sum, Optional<BigDecimal> percent, BigDecimal amount) {
    percent.ifPresent(
        each ->
            items.add(
                new Block.Item(
                    SAYINGS.say(sum, "percent", EstimateWords.percent(each)),
                    words.money(amount))));
  }
}
