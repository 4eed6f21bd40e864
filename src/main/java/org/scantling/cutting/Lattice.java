package org.scantling.cutting;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.OptionalInt;

/**
 * Whole numbers of pieces, told apart only by what whole sticks of some patterns do not make up
 * for: two heaps of pieces are alike where they differ by such sticks, taken or given back.
 *
 * <p>Source: R. E. Gomory, Some polyhedra related to combinatorial problems, Linear Algebra and its
 * Applications 2, 1969, the group of a basis (from memory); H. J. S. Smith's normal form.
 */
final class Lattice {
  private final BigInteger[][] matrix;
  private final BigInteger[][] rows;
  private final int size;

  /**
   * @param columns as many as there are demands, none of them made up of others
   */
  Lattice(int[][] columns) {
    this.size = columns.length;
    this.matrix = new BigInteger[size][size];
    this.rows = new BigInteger[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        matrix[i][j] = BigInteger.valueOf(columns[j][i]);
        rows[i][j] = i == j ? BigInteger.ONE : BigInteger.ZERO;
      }
    }
    for (int step = 0; step < size; step++) {
      while (!cleared(step)) {
        pivot(step);
        clear(step);
      }
    }
  }

  /** How many kinds of heaps there are; empty where more than that. */
  OptionalInt kinds(int most) {
    BigInteger all = BigInteger.ONE;
    for (int i = 0; i < size; i++) {
      all = all.multiply(matrix[i][i].abs());
    }
    boolean few = all.signum() > 0 && all.compareTo(BigInteger.valueOf(most)) <= 0;
    return few ? OptionalInt.of(all.intValue()) : OptionalInt.empty();
  }

  /** The kind of a heap, digit by digit; only digits that can differ. */
  int[] digits(int[] heap) {
    int[] moduli = moduli();
    int[] digits = new int[moduli.length];
    int digit = 0;
    for (int i = 0; i < size; i++) {
      BigInteger modulus = matrix[i][i].abs();
      if (modulus.compareTo(BigInteger.ONE) > 0) {
        BigInteger sum = BigInteger.ZERO;
        for (int j = 0; j < size; j++) {
          sum = sum.add(rows[i][j].multiply(BigInteger.valueOf(heap[j])));
        }
        digits[digit++] = sum.mod(modulus).intValue();
      }
    }
    return digits;
  }

  /** How many values each digit has. */
  int[] moduli() {
    return java.util.stream.IntStream.range(0, size)
        .mapToObj(i -> matrix[i][i].abs())
        .filter(each -> each.compareTo(BigInteger.ONE) > 0)
        .mapToInt(BigInteger::intValue)
        .toArray();
  }

  private boolean cleared(int step) {
    for (int i = step + 1; i < size; i++) {
      if (matrix[i][step].signum() != 0 || matrix[step][i].signum() != 0) {
        return false;
      }
    }
    return matrix[step][step].signum() != 0 || step == size - 1;
  }

  /** Brings the smallest number that is left to the place of the step. */
  private void pivot(int step) {
    int row = -1;
    int column = -1;
    for (int i = step; i < size; i++) {
      for (int j = step; j < size; j++) {
        boolean less = row < 0 || matrix[i][j].abs().compareTo(matrix[row][column].abs()) < 0;
        if (matrix[i][j].signum() != 0 && less) {
          row = i;
          column = j;
        }
      }
    }
    if (row < 0) {
      throw new IllegalArgumentException("some column is made up of others");
    }
    swap(matrix, step, row);
    swap(rows, step, row);
    for (BigInteger[] each : matrix) {
      BigInteger kept = each[step];
      each[step] = each[column];
      each[column] = kept;
    }
  }

  private static void swap(BigInteger[][] all, int one, int other) {
    BigInteger[] kept = all[one];
    all[one] = all[other];
    all[other] = kept;
  }

  private void clear(int step) {
    for (int i = step + 1; i < size; i++) {
      BigInteger times = matrix[i][step].divide(matrix[step][step]);
      if (times.signum() != 0) {
        int row = i;
        Arrays.setAll(matrix[i], j -> matrix[row][j].subtract(times.multiply(matrix[step][j])));
        Arrays.setAll(rows[i], j -> rows[row][j].subtract(times.multiply(rows[step][j])));
      }
    }
    for (int j = step + 1; j < size; j++) {
      BigInteger times = matrix[step][j].divide(matrix[step][step]);
      if (times.signum() != 0) {
        for (BigInteger[] row : matrix) {
          row[j] = row[j].subtract(times.multiply(row[step]));
        }
      }
    }
  }
}
