package org.scantling.rulecases;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.scantling.tables.ChangedTables.Cell;

/**
 * Cells that nothing notices, and why that is as it should be.
 *
 * @param id a row, or with a star at its end all rows whose ids start so
 * @param column a column, or a star for all
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
        && (column.equals("*") || column.equals(cell.column()))
        && (id.endsWith("*")
            ? cell.id().startsWith(id.substring(0, id.length() - 1))
            : cell.id().equals(id));
  }
}
