package org.scantling.shop;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.scantling.sayings.Sayings;
import org.scantling.tables.PricedItems;

/** Money, hours and what is left out, as an estimate says them. */
public final class EstimateWords {
  static final Sayings SAYINGS = Sayings.of("estimate");

  private static final BigDecimal QUARTER = new BigDecimal("0.25");
  private static final String[] QUARTERS = {"", "1/4", "1/2", "3/4"};

  private final Cost cost;

  EstimateWords(Cost cost) {
    this.cost = cost;
  }

  String money(BigDecimal amount) {
    String said = String.format(Locale.ROOT, "%,.2f", amount);
    return SAYINGS.say("money", "amount", said, "currency", cost.currency());
  }

  /** The total, or that nothing is priced. */
  public static String total(Estimate estimate) {
    return new CostBlock(estimate).cell();
  }

  /** The hours of all hands together. */
  public static String hours(WorkHours work) {
    return hours(work.hours());
  }

  /** A price may have parts of a cent. */
  static String price(BigDecimal amount) {
    return amount.scale() > 2 ? amount.toPlainString() : amount.setScale(2).toPlainString();
  }

  /** {@code 14 1/4}; decimals where a house rounds to another part of an hour. */
  static String hours(BigDecimal hours) {
    BigDecimal[] parts = hours.divideAndRemainder(BigDecimal.ONE);
    BigDecimal[] quarters = parts[1].divideAndRemainder(QUARTER);
    if (quarters[1].signum() != 0) {
      return hours.stripTrailingZeros().toPlainString();
    }
    String part = QUARTERS[quarters[0].intValueExact()];
    String whole = parts[0].toBigInteger().toString();
    return part.isEmpty() ? whole : parts[0].signum() == 0 ? part : whole + " " + part;
  }

  static String quantity(BigDecimal quantity) {
    return quantity.signum() == 0 ? "0" : quantity.stripTrailingZeros().toPlainString();
  }

  /** How much of it there is, with what it is counted in. */
  static String quantity(CostLine line) {
    String unit = line.unit();
    String saying =
        switch (unit) {
          case "each", "job", "hour" -> "quantity." + unit;
          default ->
              PricedItems.VOLUMES.contains(unit) || PricedItems.WEIGHTS.contains(unit)
                  ? "quantity.measure"
                  : "quantity.pack";
        };
    return SAYINGS.say(saying, "quantity", quantity(line.quantity()), "unit", unit);
  }

  static String percent(BigDecimal percent) {
    return quantity(percent) + " %";
  }

  /** What has no price, in words, each once. */
  List<String> leftOut() {
    List<String> words = new ArrayList<>(cost.unpriced().stream().map(CostLine::what).toList());
    if (cost.untaxed()) {
      words.add(SAYINGS.say("tax"));
    }
    return words;
  }
}
