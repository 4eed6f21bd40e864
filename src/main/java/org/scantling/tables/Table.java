package org.scantling.tables;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rows of one file, in the order of the file, rows added by a house last.
 *
 * @param <T> the kind of row
 */
public final class Table<T extends TableRow> {
  private final String fileName;
  private final Map<String, T> byId;
  private final List<T> rows;

  Table(String fileName, Collection<T> rows) {
    this.fileName = fileName;
    this.rows = List.copyOf(rows);
    this.byId = new LinkedHashMap<>(rows.size() * 2);
    for (T row : rows) {
      byId.put(row.id(), row);
    }
  }

  public String fileName() {
    return fileName;
  }

  public List<T> rows() {
    return rows;
  }

  /** The row with that id, or empty. */
  public Optional<T> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /**
   * The row with that id.
   *
   * @throws IllegalArgumentException when there is none, naming the ids that come nearest
   */
  public T row(String id) {
    T row = byId.get(id);
    if (row == null) {
      throw new IllegalArgumentException(
          fileName + " has no row '" + id + "', it has " + Near.list(id, byId.keySet()));
    }
    return row;
  }
}
