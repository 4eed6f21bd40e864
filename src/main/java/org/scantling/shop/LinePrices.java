package org.scantling.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.scantling.tables.ItemKey;
import org.scantling.tables.Price;
import org.scantling.tables.PriceList;
import org.scantling.tables.PricedItem;
import org.scantling.tables.PricedItems;

/** What the lines of a buying list cost by a list of prices; nothing else is priced. */
final class LinePrices {
  private static final String CU_FT = "cu ft";
  private static final BigDecimal CU_FT_IN_A_CU_YD = BigDecimal.valueOf(27);
  private static final BigDecimal CU_M_IN_A_CU_FT = new BigDecimal("0.028316846592");
  private static final int PLACES = 9;

  private final PriceList prices;
  private final BigDecimal volumeStep;
  private final String volume;

  LinePrices(PriceList prices, Built built) {
    this.prices = prices;
    this.volumeStep = BigDecimal.valueOf(built.shop("price.volume-step"));
    this.volume = built.tape() == Tape.MILLIMETRES ? "m3" : "cu yd";
  }

  /** The lines with what each costs. */
  List<BuyingLine> priced(List<BuyingLine> lines) {
    return lines.stream().map(line -> line.costing(cents(line))).toList();
  }

  private OptionalLong cents(BuyingLine line) {
    return of(line)
        .amount()
        .map(amount -> OptionalLong.of(amount.movePointRight(2).longValueExact()))
        .orElse(OptionalLong.empty());
  }

  /**
   * A line as something to pay for.
   *
   * @throws org.scantling.tables.YardException where its price is for a unit it is not bought by
   */
  CostLine of(BuyingLine line) {
    boolean around =
        line.key().equals(ItemKey.of(PricedItem.DISPOSAL))
            || line.key().equals(ItemKey.of(PricedItem.AUGER_RENTAL));
    String part = around ? "around" : line.section();
    Optional<Price> price = prices.of(line.key());
    String unit = price.map(Price::unit).orElse(unit(line));
    if (!units(line).contains(unit)) {
      throw prices.unfit(price.orElseThrow(), units(line));
    }
    return new CostLine(
        line.key().text(),
        part,
        line.item(),
        quantity(line, unit),
        unit,
        price.map(Price::amount).or(() -> yard(line)));
  }

  /** The yard's price of a stick. */
  private static Optional<BigDecimal> yard(BuyingLine line) {
    return line.cents().isPresent()
        ? Optional.of(
            BigDecimal.valueOf(line.cents().getAsLong(), 2)
                .divide(BigDecimal.valueOf(line.bought()), 2, RoundingMode.HALF_UP))
        : Optional.empty();
  }

  /** How it is counted where nothing else is said. */
  String unit(BuyingLine line) {
    if (line.key().equals(ItemKey.of(PricedItem.AUGER_RENTAL))) {
      return PricedItems.JOB;
    }
    return switch (line.unit()) {
      case "stick", "piece" -> PricedItems.EACH;
      case "" -> volume;
      default -> line.unit();
    };
  }

  /** What a price of it may be for one of. */
  private List<String> units(BuyingLine line) {
    List<String> units = new ArrayList<>(List.of(unit(line)));
    if (line.needed().unit().equals(CU_FT)) {
      units.addAll(PricedItems.VOLUMES);
    }
    if (line.unit().isEmpty()) {
      units.add(PricedItems.JOB);
    }
    return units.stream().distinct().toList();
  }

  private BigDecimal quantity(BuyingLine line, String unit) {
    if (PricedItems.VOLUMES.contains(unit)) {
      return volume(line.needed().amount() + line.spare().amount(), unit);
    }
    return unit.equals(PricedItems.JOB) ? BigDecimal.ONE : BigDecimal.valueOf(line.bought());
  }

  /** Rounded up to what can be ordered. */
  private BigDecimal volume(double cuFt, String unit) {
    BigDecimal amount = BigDecimal.valueOf(cuFt);
    BigDecimal inUnit =
        switch (unit) {
          case "cu yd" -> amount.divide(CU_FT_IN_A_CU_YD, PLACES, RoundingMode.HALF_UP);
          case "m3" -> amount.multiply(CU_M_IN_A_CU_FT);
          default -> amount;
        };
    return inUnit
        .divide(volumeStep, PLACES, RoundingMode.HALF_UP)
        .setScale(0, RoundingMode.UP)
        .multiply(volumeStep);
  }
}
