package org.scantling.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The name of a table's file and its columns, in order. */
final class TableColumns {
  private final String fileName;
  private final boolean open;
  private final String[] columns;
  private final Map<String, Integer> places = new HashMap<>();

  /**
   * @param open whether a house may add rows of its own
   * @param columns the table's own; those that tell of a row's source follow
   */
  TableColumns(String fileName, boolean open, String columns) {
    this.fileName = fileName;
    this.open = open;
    // concat, not +: a first + costs milliseconds at start
    this.columns = columns.concat(",kind,source,where,status,note").split(",");
    for (int i = 0; i < this.columns.length; i++) {
      places.put(this.columns[i], i);
    }
  }

  String fileName() {
    return fileName;
  }

  boolean open() {
    return open;
  }

  String[] columns() {
    return columns;
  }

  boolean has(String column) {
    return places.containsKey(column);
  }

  /** Its place among the columns. */
  int column(String name) {
    Integer place = places.get(name);
    if (place == null) {
      throw new IllegalArgumentException(fileName + " has no column " + name);
    }
    return place;
  }

  @Override
  public String toString() {
    return fileName + " " + List.of(columns);
  }
}
