package org.scantling.mechanics;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * How the ends of a beam's spans turn: as one over a support that the beam runs over, each by
 * itself where it is cut. The unknowns are numbered from the left.
 */
final class BeamTurns {
  private final List<Integer> cuts;
  private final int[] right;

  /**
   * @param cuts inner supports over which the beam is cut, counted from 0
   * @throws IllegalArgumentException if one of them is no inner support
   */
  BeamTurns(int supportCount, Collection<Integer> cuts) {
    this.cuts = List.copyOf(new TreeSet<>(cuts));
    this.right = new int[supportCount];
    int next = 0;
    for (int support = 0; support < supportCount; support++) {
      right[support] = next + (this.cuts.contains(support) ? 1 : 0);
      next = right[support] + 1;
    }
    for (int cut : this.cuts) {
      if (!(cut > 0 && cut < supportCount - 1)) {
        throw new IllegalArgumentException(
            "support " + (cut + 1) + " must have a span on both sides where a beam is cut over it");
      }
    }
  }

  List<Integer> cuts() {
    return cuts;
  }

  int count() {
    return right[right.length - 1] + 1;
  }

  /** The turn of the span that begins over a support. */
  int rightOf(int support) {
    return right[support];
  }

  /** The turn of the span that ends over a support. */
  int leftOf(int support) {
    return right[support] - (isCut(support) ? 1 : 0);
  }

  private boolean isCut(int support) {
    return support > 0 && right[support] - right[support - 1] > 1;
  }

  /** Rows of the stiffness, each from its first entry that is not zero to the diagonal. */
  double[][] stiffnessRows(double[] supportsIn) {
    double[][] rows = new double[count()][];
    rows[0] = new double[] {4 / (supportsIn[1] - supportsIn[0])};
    for (int i = 1; i < supportsIn.length; i++) {
      double left = supportsIn[i] - supportsIn[i - 1];
      double after = i + 1 < supportsIn.length ? 4 / (supportsIn[i + 1] - supportsIn[i]) : 0;
      rows[leftOf(i)] = new double[] {2 / left, 4 / left + (isCut(i) ? 0 : after)};
      if (isCut(i)) {
        rows[rightOf(i)] = new double[] {after};
      }
    }
    return rows;
  }
}
