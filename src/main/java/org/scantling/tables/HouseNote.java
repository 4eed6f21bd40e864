package org.scantling.tables;

/**
 * What a house says of one of its rows, in columns of its own; each may be left out.
 *
 * @param who who answers for it
 * @param why why it is so, as it follows "because"
 * @param basis on what it rests, such as a test or a permit
 */
record HouseNote(String who, String why, String basis) {
  static final String BASIS = "basis";

  /** In a file of a house after the columns of the table. */
  static final String[] COLUMNS = {"who", "why", BASIS};

  static final HouseNote NONE = new HouseNote("", "", "");

  /** From the last cells of a line that was arranged. */
  static HouseNote last(String[] cells) {
    int from = cells.length - COLUMNS.length;
    return new HouseNote(cells[from], cells[from + 1], cells[from + 2]);
  }
}
