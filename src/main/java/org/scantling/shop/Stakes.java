package org.scantling.shop;

/** Names of the posts: A for the near row, B for the far one, numbered from the datum. */
final class Stakes {
  private Stakes() {}

  /**
   * @param row 0 or 1
   * @param post counted from 0
   */
  static String name(int row, int post) {
    return row(row) + (post + 1);
  }

  /**
   * @param row 0 or 1
   */
  static String row(int row) {
    return row == 0 ? "A" : "B";
  }
}
