package org.scantling.sayings;

import java.util.List;
import java.util.Map;

/**
 * A row of a CSV file of words: a cell for every column of its heading, empty where nothing is
 * written.
 *
 * @param file the file below rules/, as a fault names it
 * @param cells column to cell, in the order of the heading
 */
public record WordRow(String file, Map<String, String> cells) {
  private static final String YES = "yes";

  /**
   * @throws IllegalStateException when the file has no such column
   */
  public String cell(String column) {
    String cell = cells.get(column);
    if (cell == null) {
      throw new IllegalStateException("rules/" + file + " has no column '" + column + "'");
    }
    return cell;
  }

  /** Whether the cell says {@code yes}. */
  public boolean isYes(String column) {
    return cell(column).equals(YES);
  }

  /** The words of a cell that holds several; one empty word where it is empty. */
  public List<String> list(String column, String separator) {
    return List.of(cell(column).split(separator));
  }
}
