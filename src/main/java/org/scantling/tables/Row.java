package org.scantling.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.scantling.quantity.Length;
import org.scantling.quantity.Measure;
import org.scantling.quantity.Unit;
import org.scantling.reasons.Question;
import org.scantling.reasons.Source;

/** The cells of one row by the name of their column, refused where they do not fit. */
final class Row {
  private static final String INCHES = "_in";

  /** A length that a house writes with its unit, in a column that otherwise has inches. */
  private static final Pattern METRIC = Pattern.compile("\\d{1,6}(?:\\.\\d{1,6})?\\s*(?:mm|cm|m)");

  private final TableColumns table;
  private final int line;
  private final String[] cells;
  private final Sources sources;

  Row(TableColumns table, int line, String[] cells, Sources sources) {
    this.table = table;
    this.line = line;
    this.cells = cells;
    this.sources = sources;
  }

  /** The same place in the file with other cells. */
  Row with(String[] others) {
    return new Row(table, line, others, sources);
  }

  /** This row with what stands in some columns, where they were left blank. */
  Row filled(Map<String, String> blanks) {
    String[] more = cells.clone();
    blanks.forEach(
        (column, cell) -> {
          int place = table.column(column);
          more[place] = more[place].isEmpty() ? cell : more[place];
        });
    return with(more);
  }

  /** This row as one that a house adds. */
  Row added(HouseNote note) {
    return new Row(table, line, cells, new HouseSources(sources, cells, "", note));
  }

  /**
   * This row of a house over one of ours: what it leaves blank stays as it was.
   *
   * @param instead what is told of the row that it takes the place of
   */
  Row over(Row replaced, HouseNote note, String instead) {
    String[] merged = cells.clone();
    for (int i = 0; i < merged.length; i++) {
      if (merged[i].isEmpty()) {
        merged[i] = replaced.cells[i];
      } else if (table.columns()[i].equals("unit") && !merged[i].equals(replaced.cells[i])) {
        throw refuse("unit", RefusalWords.say("cells.unit", "unit", replaced.cells[i]));
      }
    }
    return new Row(table, line, merged, new HouseSources(sources, cells, instead, note));
  }

  String fileName() {
    return table.fileName();
  }

  boolean has(String column) {
    return table.has(column);
  }

  String optional(String column) {
    return cells[table.column(column)];
  }

  String text(String column) {
    String cell = optional(column);
    if (cell.isEmpty()) {
      throw refuse(column, RefusalWords.say("cells.value"));
    }
    return cell;
  }

  String oneOf(String column, String... words) {
    String cell = text(column);
    for (String word : words) {
      if (word.equals(cell)) {
        return cell;
      }
    }
    throw refuse(column, String.join(", ", words));
  }

  /** The question that a cell names, among those that may stand there. */
  Question question(String column, String id, Predicate<Question> may) {
    List<String> known = new ArrayList<>();
    for (Question question : Question.values()) {
      if (may.test(question)) {
        if (question.id().equals(id)) {
          return question;
        }
        known.add(question.id());
      }
    }
    throw refuse(column, Near.list(id, known));
  }

  boolean yes(String column) {
    return oneOf(column, "yes", "no").equals("yes");
  }

  List<String> list(String column) {
    List<String> parts = new ArrayList<>();
    for (String part : text(column).split(";", -1)) {
      if (part.isBlank()) {
        throw refuse(column, RefusalWords.say("cells.list"));
      }
      parts.add(part.strip());
    }
    return parts;
  }

  List<Double> positives(String column) {
    List<Double> amounts = new ArrayList<>();
    for (String part : list(column)) {
      amounts.add(within(column, number(column, part), Double.MIN_VALUE, "cells.above-zero"));
    }
    return amounts;
  }

  double number(String column) {
    return number(column, text(column));
  }

  double positive(String column) {
    return within(column, number(column), Double.MIN_VALUE, "cells.above-zero");
  }

  double notNegative(String column) {
    return within(column, number(column), 0, "cells.zero-or-more");
  }

  double share(String column) {
    double amount = notNegative(column);
    if (amount > 1) {
      throw refuse(column, RefusalWords.say("cells.share"));
    }
    return amount;
  }

  OptionalDouble optionalNumber(String column) {
    return optional(column).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(notNegative(column));
  }

  /** All numbers of a cell, one or several. */
  List<Double> amounts(String column) {
    List<Double> amounts = new ArrayList<>();
    for (String part : list(column)) {
      amounts.add(number(column, part));
    }
    return amounts;
  }

  /** True where a house may add rows to the table. */
  boolean open() {
    return table.open();
  }

  int line() {
    return line;
  }

  /** The {@code value} cell with the {@code unit} cell. */
  Measure measure() {
    return new Measure(number("value"), unit());
  }

  Unit unit() {
    return UnitWords.ofRows(oneOf("unit", UnitWords.OF_ROWS));
  }

  Band band(String from, String to) {
    double low = optionalNumber(from).orElse(0);
    double high = optionalNumber(to).orElse(Double.POSITIVE_INFINITY);
    if (high < low) {
      throw refuse(to, RefusalWords.say("cells.at-least", "least", optional(from)));
    }
    return new Band(low, high);
  }

  Source source() {
    return source("");
  }

  /** The source that the columns with that prefix name. */
  Source source(String prefix) {
    return sources.of(this, prefix);
  }

  TableException refuse(String column, String accepted) {
    return new TableException(table.fileName(), line, column, optional(column), accepted);
  }

  private double number(String column, String cell) {
    if (column.endsWith(INCHES) && METRIC.matcher(cell).matches()) {
      return Length.parse(cell);
    }
    int bar = cell.indexOf('/');
    if (bar < 0) {
      return decimal(column, cell);
    }
    double parts = decimal(column, cell.substring(bar + 1));
    if (parts == 0) {
      throw refuse(column, RefusalWords.say("cells.fraction"));
    }
    return decimal(column, cell.substring(0, bar)) / parts;
  }

  private double decimal(String column, String cell) {
    double amount;
    try {
      amount = Double.parseDouble(cell);
    } catch (NumberFormatException e) {
      throw refuse(
          column, RefusalWords.say(column.endsWith(INCHES) ? "cells.inches" : "cells.number"));
    }
    if (!Double.isFinite(amount) || !Character.isDigit(cell.charAt(cell.length() - 1))) {
      throw refuse(column, RefusalWords.say("cells.finite"));
    }
    return amount;
  }

  private double within(String column, double amount, double least, String accepted) {
    if (amount < least) {
      throw refuse(column, RefusalWords.say(accepted));
    }
    return amount;
  }
}
