package org.scantling.mechanics;

import java.util.Optional;

/**
 * Tells whether a stiffness matrix resists its softest movement at all.
 *
 * <p>The movement is found by inverse iteration with the matrix taken apart, which turns to it the
 * faster the softer it is. How much it is resisted is then reckoned with the matrix as it was, so
 * that the rounding of taking it apart does not count: an error in the movement enters squared.
 */
final class SoftestMovement {
  /**
   * A movement that meets so little of the resistance of its freedoms taken singly meets none. In 5
   * million random mechanisms rounding left at most 5e-16 of it; the softest walk that stands, 36
   * bays on weak springs, kept 2e-7.
   */
  private static final double NOTHING_RATIO = 1e-12;

  private static final int ROUNDS = 3;
  private static final double GOLDEN_RATIO = (Math.sqrt(5) - 1) / 2;

  private final double[][] rows;

  /** Remembers the matrix before it is taken apart. */
  SoftestMovement(double[][] rows) {
    this.rows = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      this.rows[i] = rows[i].clone();
    }
  }

  /** The softest movement, if nothing resists it. */
  Optional<double[]> findWith(ProfileFactor factor) {
    double[] shape = anyMovement(rows.length);
    for (int round = 0; round < ROUNDS; round++) {
      double size = Math.sqrt(singly(shape));
      for (int i = 0; i < shape.length; i++) {
        shape[i] *= diagonal(i) / size;
      }
      factor.solve(shape);
    }
    boolean resisted = resistance(shape) > NOTHING_RATIO * singly(shape);
    return resisted || shape.length == 0 ? Optional.empty() : Optional.of(shape);
  }

  /**
   * Parts of either sign without any order, so that no frame's softest movement is square to it.
   */
  private static double[] anyMovement(int count) {
    double[] shape = new double[count];
    for (int i = 0; i < count; i++) {
      shape[i] = Math.IEEEremainder((i + 1) * GOLDEN_RATIO, 1);
    }
    return shape;
  }

  private double diagonal(int i) {
    return rows[i][rows[i].length - 1];
  }

  /** Resistance if every freedom moved while the others stood still. */
  private double singly(double[] shape) {
    double sum = 0;
    for (int i = 0; i < shape.length; i++) {
      sum += diagonal(i) * shape[i] * shape[i];
    }
    return sum;
  }

  /** Resistance to the movement as a whole, twice its strain energy. */
  private double resistance(double[] shape) {
    double sum = 0;
    for (int i = 0; i < shape.length; i++) {
      int first = i - rows[i].length + 1;
      double pull = diagonal(i) * shape[i];
      for (int k = first; k < i; k++) {
        pull += 2 * rows[i][k - first] * shape[k];
      }
      sum += pull * shape[i];
    }
    return sum;
  }
}
