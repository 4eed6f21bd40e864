package org.scantling.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scantling.quantity.Unit;
import org.scantling.sayings.Sayings;
import org.scantling.tables.Price;
import org.scantling.tables.PriceList;
import org.scantling.tables.PricedItem;
import org.scantling.tables.PricedItems;

/** Adds up what a job costs: what is bought, the plants, the labor, the delivery. */
final class Costing {
  private static final Sayings SAYINGS = Sayings.of("estimate");
  private static final BigDecimal POUND_KG = BigDecimal.valueOf(Unit.POUND_WEIGHT.toMetric(1));
  private static final String AROUND = "around";

  private final PriceList prices;
  private final LinePrices lines;
  private final List<CostLine> found = new ArrayList<>();

  private Costing(PriceList prices, Built built) {
    this.prices = prices;
    this.lines = new LinePrices(prices, built);
  }

  static Cost of(Built built, Buying buying, Climbers climbers, WorkHours work, PriceList prices) {
    Costing costing = new Costing(prices, built);
    buying.lines().forEach(line -> costing.found.add(costing.lines.of(line)));
    costing.plants(climbers);
    costing.labor(work);
    costing.delivery(buying);
    return Cost.of(costing.found, prices);
  }

  private void plants(Climbers climbers) {
    Map<String, Integer> count = new LinkedHashMap<>();
    climbers.plants().forEach(each -> count.merge(each.vine(), 1, Integer::sum));
    count.forEach(
        (vine, plants) ->
            add(
                PricedItems.plant(vine.replace(' ', '-')),
                "plants",
                SAYINGS.say("plant", "climber", vine),
                BigDecimal.valueOf(plants),
                PricedItems.EACH));
  }

  private void labor(WorkHours work) {
    String key = PricedItem.LABOR_HOUR.word();
    add(key, "labor", SAYINGS.say("labor"), work.hours(), PricedItems.HOUR);
  }

  /** By the job, or by the weight of timber and bags. */
  private void delivery(Buying buying) {
    String key = PricedItem.DELIVERY.word();
    String unit = prices.of(key).map(Price::unit).orElse(PricedItems.JOB);
    BigDecimal pounds = BigDecimal.valueOf(buying.totals().deliveryLb());
    BigDecimal quantity =
        switch (unit) {
          case "lb" -> pounds.setScale(0, RoundingMode.HALF_UP);
          case "kg" -> pounds.multiply(POUND_KG).setScale(0, RoundingMode.HALF_UP);
          default -> BigDecimal.ONE;
        };
    add(key, AROUND, SAYINGS.say("delivery"), quantity, unit);
  }

  private void add(String key, String part, String what, BigDecimal quantity, String unit) {
    Optional<BigDecimal> price = prices.of(key).map(Price::amount);
    found.add(new CostLine(key, part, what, quantity, unit, price));
  }
}
