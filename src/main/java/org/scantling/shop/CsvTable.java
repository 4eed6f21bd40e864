package org.scantling.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.scantling.quantity.UnitSystem;

/** A table written as comma-separated text, its columns in a fixed order. */
final class CsvTable {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  private final List<String> columns;
  private boolean metric;
  private final List<Map<String, String>> rows = new ArrayList<>();

  CsvTable(String... columns) {
    this.columns = List.of(columns);
  }

  /** The same with a column in millimetres or newtons, at the end, for each in inches or pounds. */
  CsvTable in(UnitSystem units) {
    metric = units == UnitSystem.METRIC;
    return this;
  }

  /** A new row; cells that are not set stay empty. */
  Row row() {
    Map<String, String> cells = new LinkedHashMap<>();
    rows.add(cells);
    return new Row(cells);
  }

  /** A row that is being filled. */
  final class Row {
    private final Map<String, String> cells;

    private Row(Map<String, String> cells) {
      this.cells = cells;
    }

    Row set(String column, String text) {
      if (!columns.contains(column)) {
        throw new IllegalArgumentException("no column is called " + column);
      }
      cells.put(column, text);
      return this;
    }

    /** A number to a thousandth. */
    Row set(String column, double number) {
      return set(column, Said.decimals(number, 3));
    }
  }

  String text() {
    List<String> all = metric ? MetricColumns.with(columns) : columns;
    StringBuilder text = new StringBuilder(String.join(",", all)).append('\n');
    for (Map<String, String> row : rows) {
      if (metric) {
        MetricColumns.fill(row);
      }
      text.append(
              all.stream()
                  .map(column -> quoted(row.getOrDefault(column, "")))
                  .collect(Collectors.joining(",")))
          .append('\n');
    }
    return text.toString();
  }

  /**
   * A spreadsheet takes a cell that starts with one of these for a formula, and guesses at the
   * letters of a file that says nothing of them: so only plain letters, and words for signs.
   */
  private static String safe(String cell) {
    String plain = cell.replace("\u00b0", " deg");
    if (NUMBER.matcher(plain).matches() || plain.isEmpty()) {
      return plain;
    }
    return switch (plain.charAt(0)) {
      case '-' -> "minus " + plain.substring(1);
      case '+' -> "plus " + plain.substring(1);
      case '=', '@', '\t', '\r' -> " " + plain;
      default -> plain;
    };
  }

  private static String quoted(String each) {
    String cell = safe(each);
    boolean plain = cell.chars().noneMatch(sign -> sign == ',' || sign == '"' || sign == '\n');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
