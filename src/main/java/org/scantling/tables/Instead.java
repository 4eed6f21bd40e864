package org.scantling.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What is told of a row of ours that a house writes anew: the numbers that go, and their source.
 */
final class Instead {
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?(?:/\\d+)?");
  private static final String VALUE = "value";
  private static final List<String> BARE = List.of("", "ratio", "count");

  private Instead() {}

  /**
   * @param house the row as the house wrote it, blanks and all
   */
  static String of(String[] columns, Row house, Row ours) {
    List<String> numbers = new ArrayList<>();
    for (String column : columns) {
      String written = house.optional(column);
      String before = ours.optional(column);
      if (!written.isEmpty() && !written.equals(before) && NUMBER.matcher(before).matches()) {
        numbers.add((column.equals(VALUE) ? "" : column + " ") + amount(ours, column));
      }
    }
    String source = ours.source().text();
    return numbers.isEmpty() ? source : String.join(", ", numbers) + " (" + source + ")";
  }

  /** A number as it is written, with its unit where that stands in a cell of its own. */
  static String amount(Row row, String column) {
    String unit = column.equals(VALUE) && row.has("unit") ? row.optional("unit") : "";
    return BARE.contains(unit) ? row.optional(column) : row.optional(column) + " " + unit;
  }
}
