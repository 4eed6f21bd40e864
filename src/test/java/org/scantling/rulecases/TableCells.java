package org.scantling.rulecases;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.scantling.quantity.Measure;
import org.scantling.reasons.Limit;
import org.scantling.tables.NumberRow;
import org.scantling.tables.Table;
import org.scantling.tables.TableRow;
import org.scantling.tables.Tables;

/**
 * Rows and cells of the tables by name: {@code thumb:bay.longest}, {@code users:cart:headroomIn}.
 */
final class TableCells {
  private final Map<String, Table<?>> byName = new TreeMap<>();

  TableCells(Tables tables) {
    byName.put("thumb", tables.thumbs());
    byName.put("snow", tables.snow());
    byName.put("live", tables.live());
    byName.put("authority", tables.authority());
    byName.put("wind", tables.wind());
    byName.put("users", tables.users());
    byName.put("vines", tables.vines());
    byName.put("zones", tables.zones());
    byName.put("soils", tables.soils());
    byName.put("sizes", tables.sizes());
    byName.put("checks", tables.checks());
    byName.put("joints", tables.joints());
    byName.put("defaults", tables.defaults());
    byName.put("cautions", tables.cautions());
    byName.put("base-changes", tables.baseChanges());
    byName.put("stock-lengths", tables.stockLengths());
  }

  /** The row that {@code table:id} names. */
  TableRow row(String name) {
    List<String> parts = List.of(name.split(":", -1));
    if (parts.size() != 2 || !byName.containsKey(parts.get(0))) {
      throw new IllegalArgumentException(
          "'"
              + name
              + "' must be a table and a row, such as thumb:bay.longest; tables are "
              + byName.keySet());
    }
    return byName.get(parts.get(0)).row(parts.get(1));
  }

  /** The one number of a row of numbers, or the cell that a third part names. */
  double number(String name) {
    int second = name.indexOf(':', name.indexOf(':') + 1);
    TableRow row = row(second < 0 ? name : name.substring(0, second));
    if (second < 0 && row instanceof Limit number) {
      return number.amount();
    }
    return cell(row, second < 0 ? "" : name.substring(second + 1));
  }

  /** The same row with another number in it. */
  static NumberRow with(NumberRow row, double amount) {
    return new NumberRow(
        row.id(),
        new Measure(amount, row.measure().unit()),
        row.statement(),
        row.source(),
        row.note());
  }

  private static double cell(TableRow row, String name) {
    RecordComponent[] all = row.getClass().getRecordComponents();
    for (RecordComponent each : all) {
      if (each.getName().equals(name) && each.getType() == double.class) {
        return value(each, row);
      }
    }
    List<String> numbers =
        Arrays.stream(all)
            .filter(each -> each.getType() == double.class)
            .map(RecordComponent::getName)
            .toList();
    throw new IllegalArgumentException(
        "row " + row.id() + " has no number '" + name + "', it has " + numbers);
  }

  private static double value(RecordComponent component, TableRow row) {
    try {
      return (double) component.getAccessor().invoke(row);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }
}
