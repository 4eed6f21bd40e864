package org.scantling.rulecases;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.scantling.tables.ChangedTables.Cell;

/**
 * Cells that nothing notices, and why that is as it should be.
 *
 * @param column with a colon and the place of a number where a cell holds several
 * @param why in words
 */
record Unnoticed(String table, String id, String column, String why) {
  private static final Path LIST = Path.of("src/test/resources/rulecases/unnoticed-cells.csv");

  static List<Unnoticed> all() throws IOException {
    return Files.readAllLines(LIST).stream()
        .skip(1)
        .map(line -> line.split(",", 4))
        .map(part -> new Unnoticed(part[0], part[1], part[2], part[3]))
        .toList();
  }

  boolean about(Cell cell) {
    return cell.table().equals(table)
        && (column.equals(cell.column()) || column.equals(cell.column() + ":" + cell.part()))
        && cell.id().equals(id);
  }
}
