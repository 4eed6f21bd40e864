package org.scantling.tables;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.scantling.quantity.Length;
import org.scantling.quantity.QuantityException;

/**
 * Reads a yard's list: a CSV file with the columns size, length and, where it has prices, price;
 * where it tells several of one size apart, treatment, species and grade. Everything wrong with it
 * is told at once.
 */
public final class YardFile {
  private static final String[] COLUMNS = {
    "size", "length", "price", "treatment", "species", "grade"
  };
  private static final Pattern MONEY =
      Pattern.compile(
          "(?:(?:US|CA|C|A)?[$\u20ac\u00a3]\\s*)?(\\d{1,3}(?:,\\d{3})+(?:\\.\\d{1,2})?|\\d{1,9}(?:\\.\\d{1,2})?)"
              + "(?:\\s*(?:[$\u20ac\u00a3]|USD|CAD|EUR))?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("\\D*(\\d{1,6}),(\\d{1,2})\\D*");
  private static final BigDecimal DEAREST = BigDecimal.valueOf(100_000);
  private static final double SHORTEST_IN = 12;
  private static final double LONGEST_IN = 720;

  private final String name;
  private final Tables tables;
  private final List<TableException> problems = new ArrayList<>();
  private final Map<String, Integer> lines = new HashMap<>();

  private YardFile(String name, Tables tables) {
    this.name = name;
    this.tables = tables;
  }

  /**
   * @throws YardException with every line that cannot be used
   */
  public static Yard read(Path file, Tables tables) {
    return new YardFile(file.toString(), tables).read(file);
  }

  private Yard read(Path file) {
    List<Yard.Offer> offers = new ArrayList<>();
    try {
      CsvFile csv = TheirFile.opened(name, file);
      int[] places = csv.places(COLUMNS, false);
      if (places[1] < 0) {
        throw csv.without("length");
      }
      for (CsvFile.Line line : csv.lines()) {
        read(csv, line, places, offers);
      }
      if (offers.isEmpty() && problems.isEmpty()) {
        problems.add(
            new TableException(
                name, 0, "", RefusalWords.say("found.no-lengths"), RefusalWords.say("yard.lines")));
      }
    } catch (TableException whole) {
      problems.add(whole);
    }
    if (!problems.isEmpty()) {
      throw new YardException(problems);
    }
    return new Yard(Shown.of(name), offers);
  }

  private void read(CsvFile csv, CsvFile.Line line, int[] places, List<Yard.Offer> offers) {
    int before = problems.size();
    try {
      String[] cells = csv.arranged(line, places);
      String size = size(line, cells[0]);
      double lengthIn = length(line, cells[1]);
      OptionalLong cents = price(line, cells[2]);
      Yard.Made made =
          new Yard.Made(
              oneOf(line, "treatment", cells[3]),
              oneOf(line, "species", cells[4]),
              oneOf(line, "grade", cells[5]));
      if (problems.size() == before && once(line, size, lengthIn, made)) {
        offers.add(new Yard.Offer(size, lengthIn, cents, made));
      }
    } catch (TableException wrong) {
      problems.add(wrong);
    }
  }

  private String size(CsvFile.Line line, String written) {
    String cell = WrittenSize.plain(written);
    if (tables.sizes().find(cell).isEmpty()) {
      List<String> known = tables.sizes().rows().stream().map(SizeRow::id).toList();
      boolean metric = cell.matches("\\d{2,3}x\\d{2,3}");
      wrong(
          line,
          "size",
          written,
          RefusalWords.say(
              "yard.sizes", "sizes", String.join(", ", known), "added", metric ? cell : ""));
    }
    return cell;
  }

  private double length(CsvFile.Line line, String cell) {
    try {
      double lengthIn = Length.parse(cell);
      if (lengthIn < SHORTEST_IN || lengthIn > LONGEST_IN) {
        wrong(line, "length", cell, RefusalWords.say("yard.length"));
      }
      return lengthIn;
    } catch (QuantityException noLength) {
      wrong(line, "length", cell, noLength.accepted());
      return 0;
    }
  }

  private OptionalLong price(CsvFile.Line line, String cell) {
    if (cell.isEmpty()) {
      return OptionalLong.empty();
    }
    Matcher money = MONEY.matcher(cell);
    if (!money.matches()) {
      wrong(line, "price", cell, RefusalWords.say("yard.price", "meant", meant(cell)));
      return OptionalLong.empty();
    }
    BigDecimal price = new BigDecimal(money.group(1).replace(",", ""));
    if (price.signum() <= 0 || price.compareTo(DEAREST) > 0) {
      wrong(line, "price", cell, RefusalWords.say("yard.price-range"));
      return OptionalLong.empty();
    }
    return OptionalLong.of(price.movePointRight(2).longValueExact());
  }

  private static String meant(String cell) {
    Matcher comma = DECIMAL_COMMA.matcher(cell);
    return comma.matches() ? comma.group(1) + "." + comma.group(2) : "";
  }

  /** Empty where the list leaves it open. */
  private Optional<String> oneOf(CsvFile.Line line, String column, String cell) {
    MadeWords words = new MadeWords(tables);
    Optional<String> meant = cell.isEmpty() ? Optional.empty() : words.meant(column, cell);
    if (!cell.isEmpty() && meant.isEmpty()) {
      wrong(
          line,
          column,
          cell,
          RefusalWords.say(
              "yard.made",
              "words",
              String.join(", ", words.known(column)),
              "why",
              OtherGrades.why(cell).orElse("")));
    }
    return meant;
  }

  private boolean once(CsvFile.Line line, String size, double lengthIn, Yard.Made made) {
    String what = size + " " + Math.round(lengthIn * 64) + " " + made;
    Integer earlier = lines.putIfAbsent(what, line.number());
    if (earlier != null) {
      wrong(
          line,
          "length",
          line.cells().get(0),
          RefusalWords.say("yard.once", "line", String.valueOf(earlier)));
    }
    return earlier == null;
  }

  private void wrong(CsvFile.Line line, String column, String found, String accepted) {
    problems.add(new TableException(name, line.number(), column, found, accepted));
  }
}
