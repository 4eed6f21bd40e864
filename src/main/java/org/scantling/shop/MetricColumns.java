package org.scantling.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Columns in metric units beside those that programs read in inches, pounds and feet. */
final class MetricColumns {
  private static final String INCHES = "_in";
  private static final String POUNDS = "_lb";
  private static final String UNIT = "quantity_unit";

  private MetricColumns() {}

  /** The columns there are, then their metric ones. */
  static List<String> with(List<String> columns) {
    List<String> all = new ArrayList<>(columns);
    for (String column : columns) {
      if (column.endsWith(INCHES) || column.endsWith(POUNDS)) {
        all.add(metric(column));
      }
    }
    if (columns.contains(UNIT)) {
      all.addAll(List.of("needed_m", "spare_m", "needed_m3", "spare_m3"));
    }
    return all;
  }

  /** Fills the metric cells of a row from the others. */
  static void fill(Map<String, String> row) {
    for (Map.Entry<String, String> cell : List.copyOf(row.entrySet())) {
      String column = cell.getKey();
      if (column.endsWith(INCHES)) {
        put(row, metric(column), MetricKeys.LENGTH, cell.getValue());
      } else if (column.endsWith(POUNDS)) {
        put(row, metric(column), MetricKeys.FORCE, cell.getValue());
      }
    }
    String unit = row.getOrDefault(UNIT, "");
    for (String column : List.of("needed", "spare")) {
      String cell = row.getOrDefault(column, "");
      switch (unit) {
        case "ft" -> put(row, column + "_m", MetricKeys.RUN, cell);
        case "in" -> put(row, column + "_m", MetricKeys.INCH_RUN, cell);
        case "cu ft" -> put(row, column + "_m3", MetricKeys.VOLUME, cell);
        default -> {}
      }
    }
  }

  private static String metric(String column) {
    return column.endsWith(INCHES)
        ? column.substring(0, column.length() - INCHES.length()) + "_mm"
        : column.substring(0, column.length() - POUNDS.length()) + "_n";
  }

  private static void put(
      Map<String, String> row, String column, MetricKeys.Twin twin, String number) {
    if (!number.isEmpty()) {
      row.put(column, Said.decimals(twin.of(Double.parseDouble(number)), twin.places()));
    }
  }
}
