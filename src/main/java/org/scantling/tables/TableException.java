package org.scantling.tables;

/** A table that cannot be used: where, what was found, and what would be accepted. */
public final class TableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final String column;
  private final String found;
  private final String accepted;

  /**
   * @param file name of the table, without its folder
   * @param line line in the file, from 1; 0 when the whole file is meant
   * @param column name of the column, or empty when the whole line is meant
   * @param found the words that were found
   * @param accepted what would be accepted there
   */
  public TableException(String file, int line, String column, String found, String accepted) {
    super(sentence(file, line, column, found, accepted));
    this.file = file;
    this.line = line;
    this.column = column;
    this.found = found;
    this.accepted = accepted;
  }

  private static String sentence(
      String file, int line, String column, String found, String accepted) {
    StringBuilder place = new StringBuilder(file);
    if (line > 0) {
      place.append(':').append(line);
    }
    if (!column.isEmpty()) {
      place.append(": ").append(column);
    }
    return RefusalWords.say(
        found.isEmpty() ? "problem.nothing" : "problem",
        "place",
        place.toString(),
        "found",
        found,
        "accepted",
        accepted);
  }

  public String file() {
    return file;
  }

  public int line() {
    return line;
  }

  public String column() {
    return column;
  }

  public String found() {
    return found;
  }

  public String accepted() {
    return accepted;
  }
}
