package org.scantling.cutting;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * The least loss with which heaps of every kind are made up, out of patterns that lose something.
 */
final class LeastLoss {
  private final int[] moduli;
  private final double[] least;

  /**
   * @param kinds how many kinds there are
   * @param steps kind and loss of each pattern
   * @param most loss beyond which it does not matter
   */
  LeastLoss(int[] moduli, int kinds, int[][] steps, double[] losses, double most) {
    this.moduli = moduli;
    this.least = new double[kinds];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    record At(int kind, double loss) {}
    PriorityQueue<At> next =
        new PriorityQueue<>((one, other) -> Double.compare(one.loss(), other.loss()));
    least[0] = 0;
    next.add(new At(0, 0));
    while (!next.isEmpty()) {
      At at = next.poll();
      if (at.loss() > least[at.kind()]) {
        continue;
      }
      int[] digits = digits(at.kind());
      for (int step = 0; step < steps.length; step++) {
        double loss = at.loss() + losses[step];
        int kind = kind(digits, steps[step], 1);
        if (loss <= most && loss < least[kind]) {
          least[kind] = loss;
          next.add(new At(kind, loss));
        }
      }
    }
  }

  double of(int kind) {
    return least[kind];
  }

  int kind(int[] digits) {
    return kind(digits, new int[digits.length], 1);
  }

  /** The kind of a heap with another added, or taken away. */
  int kind(int[] digits, int[] other, int sign) {
    int kind = 0;
    for (int i = 0; i < moduli.length; i++) {
      kind = kind * moduli[i] + Math.floorMod(digits[i] + sign * other[i], moduli[i]);
    }
    return kind;
  }

  int[] digits(int kind) {
    int[] digits = new int[moduli.length];
    int left = kind;
    for (int i = moduli.length - 1; i >= 0; i--) {
      digits[i] = left % moduli[i];
      left /= moduli[i];
    }
    return digits;
  }
}
