package org.scantling.rulecases;

import java.util.List;
import org.scantling.tables.ChangedTables.Cell;

/**
 * What notices a cell.
 *
 * @param way which nudge
 * @param watch the name of what differs
 */
record Witness(Cell cell, int way, String watch) {
  static Witness read(String line) {
    List<String> parts = List.of(line.split(","));
    Cell cell = new Cell(parts.get(0), parts.get(1), parts.get(2), Integer.parseInt(parts.get(3)));
    return new Witness(cell, Integer.parseInt(parts.get(4)), parts.get(5));
  }

  String line() {
    return String.join(
        ",",
        cell.table(),
        cell.id(),
        cell.column(),
        String.valueOf(cell.part()),
        String.valueOf(way),
        watch);
  }
}
