package org.scantling.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Where a house wrote which row, to refuse it there. */
final class HouseLines {
  private final HouseRules house;

  HouseLines(HouseRules house) {
    this.house = house;
  }

  boolean has(TableFile table, String id) {
    return line(table, id).isPresent();
  }

  /** At the row of the house, or at its table where what breaks is what a row took away. */
  TableException refuse(TableFile table, String id, String column, String found, String accepted) {
    Optional<Integer> own = line(table, id);
    if (own.isPresent()) {
      return new TableException(table.fileName(), own.get(), column, found, accepted);
    }
    // Ours pointed at a row that the house changed: the first row of that table is where to look.
    for (Map.Entry<TableFile, CsvFile> file : house.tables().entrySet()) {
      if (changes(file.getKey(), table) && !file.getValue().lines().isEmpty()) {
        int line = file.getValue().lines().get(0).number();
        return new TableException(
            file.getKey().fileName(),
            line,
            "",
            RefusalWords.say("found.after", "id", id, "table", table.fileName(), "found", found),
            accepted);
      }
    }
    return new TableException(table.fileName(), 0, column, found, accepted);
  }

  /** What the whole table lacks, told at the house's first row of it. */
  TableException refuse(TableFile table, String column, String found, String accepted) {
    CsvFile file = house.tables().get(table);
    int line = file == null || file.lines().isEmpty() ? 0 : file.lines().get(0).number();
    return new TableException(table.fileName(), line, column, found, accepted);
  }

  private static boolean changes(TableFile pointedTo, TableFile pointing) {
    return switch (pointing) {
      case JOINTS -> pointedTo == TableFile.FASTENERS;
      case SIZES -> pointedTo == TableFile.STOCK_LENGTHS;
      case DEFAULTS ->
          pointedTo == TableFile.SIZES
              || pointedTo == TableFile.FASTENERS
              || pointedTo == TableFile.DESIGN_VALUES;
      default -> false;
    };
  }

  private Optional<Integer> line(TableFile table, String id) {
    CsvFile file = house.tables().get(table);
    if (file == null) {
      return Optional.empty();
    }
    int place = file.heading().cells().indexOf("id");
    return file.lines().stream()
        .filter(line -> line.cells().get(place).equals(id))
        .map(CsvFile.Line::number)
        .findFirst();
  }

  /** The ids of some rows, as a refusal lists them. */
  static <T extends TableRow> List<String> ids(Table<T> table, Predicate<T> which) {
    return table.rows().stream().filter(which).map(TableRow::id).toList();
  }

  /** A number as it is written in a cell. */
  static String number(double amount) {
    return Double.toString(amount).replaceAll("\\.0$", "");
  }
}
