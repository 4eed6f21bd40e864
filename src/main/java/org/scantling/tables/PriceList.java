package org.scantling.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What things cost, as somebody's own list says it; nothing else has a price.
 *
 * @param name the file it was read from
 * @param currency by its three letters; empty where nothing has a price
 * @param list in the order of the file, without lines that leave the price empty
 */
public record PriceList(String name, String currency, List<Price> list) {
  public PriceList {
    list = List.copyOf(list);
  }

  /**
   * The price of something: of two that serve, the one that says more of it; of those that say as
   * much, the one that says the treatment, then the one that says the species.
   */
  public Optional<Price> of(ItemKey bought) {
    return list.stream()
        .filter(price -> price.item().serves(bought))
        .max(
            Comparator.comparingInt(Price::said)
                .thenComparing(price -> price.item().made().treatment().isPresent())
                .thenComparing(price -> price.item().made().species().isPresent()));
  }

  /** The price of what is no timber. */
  public Optional<Price> of(String item) {
    return of(ItemKey.of(item));
  }

  /**
   * The refusal of a price whose unit the job does not use.
   *
   * @param units those that would fit
   */
  public YardException unfit(Price price, List<String> units) {
    return new YardException(
        List.of(
            new TableException(
                name,
                price.line(),
                "unit",
                price.unit(),
                RefusalWords.say("prices.unit-here", "units", String.join(", ", units)))));
  }
}
