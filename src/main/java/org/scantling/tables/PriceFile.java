package org.scantling.tables;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a list of prices: a CSV file with the columns item, unit, price, currency and note, in
 * which lines that begin with # are remarks. A line without a price prices nothing. Everything
 * wrong with it is told at once.
 */
public final class PriceFile {
  private static final String[] COLUMNS = {"item", "unit", "price", "currency", "note"};
  private static final Pattern AMOUNT =
      Pattern.compile("\\d{1,3}(?:,\\d{3})+(?:\\.\\d{1,4})?|\\d{1,9}(?:\\.\\d{1,4})?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d{1,6}),(\\d{1,2})");
  private static final BigDecimal DEAREST = BigDecimal.valueOf(100_000);
  private static final BigDecimal WHOLE = BigDecimal.valueOf(100);

  private final String name;
  private final PricedItems items;
  private final ItemReader reader;
  private final Optional<Yard> yard;
  private final Tables tables;
  private final List<TableException> problems = new ArrayList<>();
  private final List<Price> prices = new ArrayList<>();
  private final Map<ItemKey, Integer> lines = new HashMap<>();
  private String currency = "";
  private int currencyLine;

  private PriceFile(String name, Tables tables, Optional<Yard> yard) {
    this.name = name;
    this.tables = tables;
    this.items = new PricedItems(tables);
    this.reader = new ItemReader(tables, items);
    this.yard = yard;
  }

  /**
   * @param yard whose list may have a price for timber already, which is then not given twice
   * @throws YardException with every line that cannot be used
   */
  public static PriceList read(Path file, Tables tables, Optional<Yard> yard) {
    return new PriceFile(file.toString(), tables, yard).read(file);
  }

  private PriceList read(Path file) {
    try {
      CsvFile csv = TheirFile.commented(name, file);
      int[] places = csv.places(COLUMNS, false);
      for (int needed = 1; needed < 3; needed++) {
        if (places[needed] < 0) {
          throw csv.without(COLUMNS[needed]);
        }
      }
      csv.lines().forEach(line -> read(csv, line, places));
      inOneCurrency();
    } catch (TableException whole) {
      problems.add(whole);
    }
    if (!problems.isEmpty()) {
      throw new YardException(problems);
    }
    return new PriceList(Shown.of(name), currency, prices);
  }

  private void read(CsvFile csv, CsvFile.Line line, int[] places) {
    int before = problems.size();
    try {
      String[] cells = csv.arranged(line, places);
      Optional<ItemKey> item = item(line, cells[0]);
      String unit = item.isPresent() ? unit(line, item.get(), cells[1], cells[2]) : "";
      Optional<BigDecimal> amount = amount(line, unit, cells[2]);
      currency(line, cells[3]);
      if (problems.size() == before && item.isPresent() && once(line, item.get(), cells[0])) {
        amount.ifPresent(each -> add(line, new Price(line.number(), item.get(), unit, each)));
      }
    } catch (TableException wrong) {
      problems.add(wrong);
    }
  }

  private Optional<ItemKey> item(CsvFile.Line line, String cell) {
    Optional<ItemKey> item = reader.read(cell);
    if (item.isEmpty()) {
      wrong(line, "item", cell, reader.accepted(cell));
    }
    return item;
  }

  /** As the tables write it. */
  private String unit(CsvFile.Line line, ItemKey item, String cell, String price) {
    List<String> units = items.units(item.item());
    if (cell.isEmpty() && price.isEmpty()) {
      return "";
    }
    Optional<String> meant = units.stream().filter(each -> WordForm.same(each, cell)).findFirst();
    if (meant.isEmpty()) {
      wrong(line, "unit", cell, RefusalWords.say("prices.unit", "units", String.join(", ", units)));
    }
    return meant.orElse("");
  }

  private Optional<BigDecimal> amount(CsvFile.Line line, String unit, String cell) {
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    boolean percent = unit.equals(PricedItems.PERCENT);
    if (!AMOUNT.matcher(cell).matches()) {
      String saying = percent ? "prices.percent" : "prices.price";
      wrong(line, "price", cell, RefusalWords.say(saying, "meant", meant(cell)));
      return Optional.empty();
    }
    BigDecimal amount = new BigDecimal(cell.replace(",", ""));
    if (amount.compareTo(percent ? WHOLE : DEAREST) > 0) {
      wrong(
          line,
          "price",
          cell,
          RefusalWords.say(percent ? "prices.percent-range" : "prices.price-range"));
    }
    return Optional.of(amount);
  }

  private static String meant(String cell) {
    Matcher comma = DECIMAL_COMMA.matcher(cell);
    return comma.matches() ? comma.group(1) + "." + comma.group(2) : "";
  }

  private void currency(CsvFile.Line line, String cell) {
    if (cell.isEmpty()) {
      return;
    }
    String letters = cell.toUpperCase(Locale.ROOT);
    boolean known =
        Currency.getAvailableCurrencies().stream()
            .anyMatch(each -> each.getCurrencyCode().equals(letters));
    if (!known) {
      wrong(line, "currency", cell, RefusalWords.say("prices.currency"));
    } else if (currency.isEmpty()) {
      currency = letters;
      currencyLine = line.number();
    } else if (!currency.equals(letters)) {
      wrong(
          line,
          "currency",
          cell,
          RefusalWords.say(
              "prices.one-currency", "currency", currency, "line", String.valueOf(currencyLine)));
    }
  }

  /** Money without its currency means nothing. */
  private void inOneCurrency() {
    if (currency.isEmpty() && problems.isEmpty()) {
      prices.stream()
          .filter(each -> !each.unit().equals(PricedItems.PERCENT))
          .findFirst()
          .ifPresent(
              each ->
                  problems.add(
                      new TableException(
                          name, each.line(), "currency", "", RefusalWords.say("prices.currency"))));
    }
  }

  private boolean once(CsvFile.Line line, ItemKey item, String cell) {
    Integer earlier = lines.putIfAbsent(item, line.number());
    if (earlier != null) {
      wrong(line, "item", cell, RefusalWords.say("prices.once", "line", String.valueOf(earlier)));
    }
    return earlier == null;
  }

  /** A stick has one price: the yard's or this one. */
  private void add(CsvFile.Line line, Price price) {
    boolean priced =
        yard.map(Yard::offers).orElse(List.of()).stream()
            .filter(offer -> offer.cents().isPresent())
            .map(offer -> ItemKey.stick(tables.size(offer.size()), offer.lengthIn(), offer.made()))
            .anyMatch(price.item()::meets);
    if (priced) {
      String yardName = yard.orElseThrow().name();
      wrong(
          line,
          "price",
          price.amount().toPlainString(),
          RefusalWords.say("prices.by-the-yard", "yard", yardName));
    } else {
      prices.add(price);
    }
  }

  private void wrong(CsvFile.Line line, String column, String found, String accepted) {
    problems.add(new TableException(name, line.number(), column, found, accepted));
  }
}
