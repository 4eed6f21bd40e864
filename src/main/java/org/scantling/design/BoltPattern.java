package org.scantling.design;

/**
 * Where the bolts sit where boards cross a post: two in every column, one above the other, as far
 * apart as the board allows, in one column or in two.
 *
 * @param columns 1 or 2
 * @param spacingIn from the upper to the lower bolt
 * @param toEdgeIn from a bolt to the nearest edge of the board, which is also its distance to the
 *     top of the post
 * @param apartIn between two columns, half the post; 0 for one
 */
public record BoltPattern(int columns, double spacingIn, double toEdgeIn, double apartIn) {
  private static final int IN_A_COLUMN = 2;
  private static final double LEAST_IN = 0.01;

  /**
   * The pattern of so many bolts.
   *
   * @param count 2 or 4
   * @param boardIn depth of the board, in
   * @param postIn breadth of the post, in
   * @param edgeIn least distance to the edges of the board, in
   * @param apartMostIn greatest distance of two bolts across the grain of the board, in
   */
  public static BoltPattern of(
      int count, double boardIn, double postIn, double edgeIn, double apartMostIn) {
    int columns = Math.max(1, count / IN_A_COLUMN);
    double spacingIn = Math.max(LEAST_IN, Math.min(boardIn - 2 * edgeIn, apartMostIn));
    return new BoltPattern(
        columns, spacingIn, (boardIn - spacingIn) / 2, columns > 1 ? postIn / 2 : 0);
  }

  /** Bolts at one crossing. */
  public int count() {
    return columns * IN_A_COLUMN;
  }
}
