package org.scantling.shop;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.scantling.tables.Price;
import org.scantling.tables.PriceList;
import org.scantling.tables.PricedItem;

/**
 * What a job costs, as far as it is priced. Every line is rounded to the cent, a half up, and so
 * are the taxes and the markup; the sums are of what is rounded.
 *
 * @param currency by its three letters; empty where the prices name none
 * @param lines in the order of the buying list, then plants, labor and delivery
 * @param materialsTax percent on what is bought
 * @param markup percent on everything, tax on materials with it
 * @param tax percent on everything, markup with it
 */
public record Cost(
    String currency,
    List<CostLine> lines,
    Optional<BigDecimal> materialsTax,
    Optional<BigDecimal> markup,
    Optional<BigDecimal> tax) {
  private static final int PERCENT = 2;

  public Cost {
    lines = List.copyOf(lines);
  }

  static Cost of(List<CostLine> lines, PriceList prices) {
    return new Cost(
        prices.currency(),
        lines,
        percent(prices, PricedItem.MATERIALS_TAX),
        percent(prices, PricedItem.MARKUP),
        percent(prices, PricedItem.TAX));
  }

  private static Optional<BigDecimal> percent(PriceList prices, PricedItem item) {
    return prices.of(item.word()).map(Price::amount);
  }

  /** True where anything has a price. */
  public boolean priced() {
    return lines.stream().anyMatch(each -> each.price().isPresent());
  }

  /** What is priced of some of the lines. */
  BigDecimal sum(Predicate<CostLine> which) {
    return lines.stream()
        .filter(which)
        .flatMap(each -> each.amount().stream())
        .reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add);
  }

  BigDecimal onMaterials() {
    return share(materialsTax, sum(CostLine::goods));
  }

  BigDecimal markedUp() {
    return share(markup, sum(each -> true).add(onMaterials()));
  }

  /** What is asked before the tax on everything. */
  BigDecimal beforeTax() {
    return sum(each -> true).add(onMaterials()).add(markedUp());
  }

  BigDecimal onAll() {
    return share(tax, beforeTax());
  }

  /** Of everything that has a price. */
  public BigDecimal total() {
    return beforeTax().add(onAll());
  }

  private static BigDecimal share(Optional<BigDecimal> percent, BigDecimal of) {
    return CostLine.cents(of.multiply(percent.orElse(BigDecimal.ZERO)).movePointLeft(PERCENT));
  }

  /** What has no price, each once. */
  List<CostLine> unpriced() {
    return lines.stream().filter(each -> each.price().isEmpty()).toList();
  }

  /** True where no tax is in it. */
  boolean untaxed() {
    return tax.isEmpty() && materialsTax.isEmpty();
  }

  /** The keys of what the total leaves out, each once; the markup is nobody's but the builder's. */
  public List<String> without() {
    List<String> keys = new java.util.ArrayList<>(unpriced().stream().map(CostLine::key).toList());
    if (untaxed()) {
      keys.add(PricedItem.TAX.word());
    }
    return List.copyOf(keys);
  }
}
