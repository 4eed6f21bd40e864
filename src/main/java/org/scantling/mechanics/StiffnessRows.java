package org.scantling.mechanics;

/** Gathers a symmetric stiffness matrix, each row from its first entry to the diagonal. */
final class StiffnessRows {
  private final int[] first;
  private double[][] rows = {};

  StiffnessRows(int count) {
    first = new int[count];
    for (int i = 0; i < count; i++) {
      first[i] = i;
    }
  }

  /** Makes room for a member; all members first, then the additions. */
  void reserve(int[] freedoms) {
    int lowest = Integer.MAX_VALUE;
    for (int freedom : freedoms) {
      lowest = freedom == Freedoms.NONE ? lowest : Math.min(lowest, freedom);
    }
    for (int freedom : freedoms) {
      if (freedom != Freedoms.NONE) {
        first[freedom] = Math.min(first[freedom], lowest);
      }
    }
  }

  void add(int[] freedoms, double[][] stiffness) {
    double[][] room = toArray();
    for (int i = 0; i < freedoms.length; i++) {
      for (int j = 0; j < freedoms.length; j++) {
        int row = freedoms[i];
        int column = freedoms[j];
        if (column != Freedoms.NONE && row >= column) {
          room[row][column - first[row]] += stiffness[i][j];
        }
      }
    }
  }

  void addSpring(int freedom, double stiffness) {
    if (freedom != Freedoms.NONE) {
      double[] row = toArray()[freedom];
      row[row.length - 1] += stiffness;
    }
  }

  double[][] toArray() {
    if (rows.length != first.length) {
      rows = new double[first.length][];
      for (int i = 0; i < first.length; i++) {
        rows[i] = new double[i - first[i] + 1];
      }
    }
    return rows;
  }
}
