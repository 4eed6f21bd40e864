package org.scantling.mechanics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

class ProfileFactorPropertyTest {
  /** A random stiffness-like matrix: springs between random pairs, and one to the ground each. */
  private static double[][] rows(int size, Random random) {
    double[][] full = new double[size][size];
    for (int i = 0; i < size; i++) {
      full[i][i] += 0.1 + random.nextDouble();
      int j = Math.max(0, i - random.nextInt(4));
      if (j < i) {
        double spring = 100 * random.nextDouble();
        full[i][i] += spring;
        full[j][j] += spring;
        full[i][j] -= spring;
      }
    }
    double[][] rows = new double[size][];
    for (int i = 0; i < size; i++) {
      int first = 0;
      while (first < i && Math.abs(full[i][first]) < 1e-300) {
        first++;
      }
      rows[i] = Arrays.copyOfRange(full[i], first, i + 1);
    }
    return rows;
  }

  @Property
  void it_solves_as_a_dense_library_does(
      @ForAll @IntRange(min = 1, max = 30) int size, @ForAll long seed) {
    Random random = new Random(seed);
    double[][] rows = rows(size, random);
    DMatrixRMaj matrix = new DMatrixRMaj(size, size);
    DMatrixRMaj right = new DMatrixRMaj(size, 1);
    double[] vector = new double[size];
    for (int i = 0; i < size; i++) {
      int first = i - rows[i].length + 1;
      for (int j = first; j <= i; j++) {
        matrix.set(i, j, rows[i][j - first]);
        matrix.set(j, i, rows[i][j - first]);
      }
      vector[i] = random.nextGaussian();
      right.set(i, 0, vector[i]);
    }
    DMatrixRMaj expected = new DMatrixRMaj(size, 1);
    assertThat(CommonOps_DDRM.solve(matrix, right, expected)).isTrue();
    new ProfileFactor(rows).solve(vector);
    for (int i = 0; i < size; i++) {
      assertThat(vector[i]).isCloseTo(expected.get(i, 0), within(1e-8));
    }
  }
}
