package org.scantling.mechanics;

/**
 * A symmetric stiffness matrix taken apart once (L·D·Lᵀ), then solved for many load cases.
 *
 * <p>Each row is kept from its first entry that is not zero to the diagonal, and nothing outside
 * that profile ever fills in. With the unknowns numbered along the structure, memory and work grow
 * in line with its length.
 */
final class ProfileFactor {
  /**
   * A pivot this small beside its own diagonal is rounding. Frames that stand keep 1e-5, so there
   * is room on both sides; what slips through is caught by the softest movement.
   */
  private static final double LOST_PIVOT_RATIO = 1e-11;

  private final double[][] rows;
  private final double[] pivot;

  /**
   * Takes the matrix apart.
   *
   * @param rows row i holds the entries from its first column that is not zero up to the diagonal;
   *     the array is taken over and overwritten
   * @throws SingularException if some movement is held by nothing
   */
  ProfileFactor(double[][] rows) {
    SoftestMovement softest = new SoftestMovement(rows);
    this.rows = rows;
    this.pivot = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      eliminate(i);
    }
    softest.findWith(this).ifPresent(SingularException::raise);
  }

  private void eliminate(int i) {
    double[] row = rows[i];
    int first = i - row.length + 1;
    double whole = row[row.length - 1];
    for (int j = first; j < i; j++) {
      row[j - first] -= dot(row, first, rows[j], j);
    }
    double left = whole;
    for (int j = first; j < i; j++) {
      double scaled = row[j - first] / pivot[j];
      left -= scaled * row[j - first];
      row[j - first] = scaled;
    }
    if (!(left > LOST_PIVOT_RATIO * whole)) {
      throw new SingularException(looseShape(i));
    }
    pivot[i] = left;
  }

  /** Sum over the columns before j that both rows hold; row j is already scaled. */
  private static double dot(double[] row, int first, double[] other, int j) {
    int otherFirst = j - other.length + 1;
    double sum = 0;
    for (int k = Math.max(first, otherFirst); k < j; k++) {
      sum += row[k - first] * other[k - otherFirst];
    }
    return sum;
  }

  /** The movement that meets no resistance: unit at the lost pivot, followed by those before. */
  private double[] looseShape(int lost) {
    double[] shape = new double[lost + 1];
    shape[lost] = 1;
    for (int j = lost; j >= 0; j--) {
      int first = j - rows[j].length + 1;
      for (int k = first; k < j; k++) {
        shape[k] -= rows[j][k - first] * shape[j];
      }
    }
    return shape;
  }

  /** Solves in place: loads come in, displacements go out. */
  void solve(double[] vector) {
    int count = rows.length;
    for (int i = 0; i < count; i++) {
      int first = i - rows[i].length + 1;
      for (int k = first; k < i; k++) {
        vector[i] -= rows[i][k - first] * vector[k];
      }
    }
    for (int i = 0; i < count; i++) {
      vector[i] /= pivot[i];
    }
    for (int i = count - 1; i >= 0; i--) {
      int first = i - rows[i].length + 1;
      for (int k = first; k < i; k++) {
        vector[k] -= rows[i][k - first] * vector[i];
      }
    }
  }

  /** How many numbers are kept: the measure of memory and, times the profile's width, of work. */
  long entryCount() {
    long entries = 0;
    for (double[] row : rows) {
      entries += row.length;
    }
    return entries;
  }

  /** Nothing holds a freedom; carries the movement that meets no resistance. */
  static final class SingularException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient double[] shape;

    SingularException(double[] shape) {
      super("the stiffness matrix is singular");
      this.shape = shape;
    }

    static void raise(double[] shape) {
      throw new SingularException(shape);
    }

    double[] shape() {
      return shape;
    }
  }
}
