package org.scantling.shop;

/** Names of the posts: A for the near row, B for the far one, numbered from the datum. */
final class Stakes {
  private Stakes() {}

  /**
   * @param row 0 or 1
   * @param post counted from 0
   */
  static String name(int row, int post) {
    return (row == 0 ? "A" : "B") + (post + 1);
  }
}
