package org.scantling.shop;

import org.scantling.tables.FreshWeight;
import org.scantling.tables.SizeRow;

/** What a piece weighs when it is lifted: fresh, with what is left on it until it stands. */
final class Weights {
  private static final double CU_IN = 12 * 12 * 12;

  private Weights() {}

  static double of(Built built, Piece piece) {
    SizeRow size = built.tables().size(piece.shape().size());
    Shape shape = piece.shape();
    PieceTimber timber = built.timber(shape.role());
    double pcf =
        FreshWeight.pcf(
            built.tables(),
            built.tables().designValues(timber.species(), timber.grade(), size).wetWeightPcf());
    return shape.breadthIn() * shape.depthIn() * shape.cutIn() * pcf / CU_IN;
  }

  /** How many people lift it: 1, 2, or 3 for more than two. */
  static int hands(Built built, double weightLb) {
    if (weightLb <= built.tables().thumb("lift.one-person").amount()) {
      return 1;
    }
    return weightLb <= built.shop("lift.two-person") ? 2 : 3;
  }

  /** The heaviest piece of a role; 0 where there is none. */
  static double heaviest(Built built, Pieces pieces, String role) {
    return pieces.of(role).stream().mapToDouble(each -> of(built, each)).max().orElse(0);
  }
}
