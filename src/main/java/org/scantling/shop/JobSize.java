package org.scantling.shop;

/**
 * How big a job is.
 *
 * @param timberCuFt in the finished pieces
 * @param posts each with its hole
 * @param soilOutCuFt that is dug
 * @param heaviestLiftLb of the headers and crossbeams
 * @param hands people whom that takes: 1, 2, or 3 for more than two
 */
public record JobSize(
    double timberCuFt, int posts, double soilOutCuFt, double heaviestLiftLb, int hands) {
  private static final double CU_IN = 12 * 12 * 12;

  static JobSize of(Built built, Pieces pieces) {
    double timberIn3 = 0;
    for (Piece piece : pieces.all()) {
      Shape shape = piece.shape();
      timberIn3 += piece.count() * shape.breadthIn() * shape.depthIn() * shape.cutIn();
    }
    double heaviestLb =
        Math.max(
            Weights.heaviest(built, pieces, "header"),
            Weights.heaviest(built, pieces, "crossbeam"));
    return new JobSize(
        timberIn3 / CU_IN,
        built.geometry().postCount(),
        new Holes(built).dugCuFt(),
        heaviestLb,
        Weights.hands(built, heaviestLb));
  }
}
