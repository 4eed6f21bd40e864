package org.scantling.judge;

/**
 * A stiff pole in soil whose push back grows with depth: IBC 1807.3.2.1 for its depth, and the
 * moment and shear below the ground of the same parabola of pressure.
 */
final class Pole {
  private Pole() {}

  /** Depth in feet that a push needs, IBC Equation 18-1, S1 at a third of the depth. */
  static double depthFt(double pushLb, double upFt, double widthFt, double soilPsfPerFt) {
    double low = 0.01;
    double high = 100;
    for (int i = 0; i < 100; i++) {
      double depth = (low + high) / 2;
      double s1 = soilPsfPerFt * Math.min(depth, 12) / 3;
      double a = 2.34 * pushLb / (s1 * widthFt);
      double need = 0.5 * a * (1 + Math.sqrt(1 + 4.36 * upFt / a));
      if (need > depth) {
        low = depth;
      } else {
        high = depth;
      }
    }
    return high;
  }

  static double pivot(double depth, double up) {
    return depth * (3 * depth + 4 * up) / (4 * depth + 6 * up);
  }

  /** Push back of a unit turn: the integral of z (z0 - z) to the depth. */
  static double hold(double depth, double up) {
    return pivot(depth, up) * depth * depth / 2 - Math.pow(depth, 3) / 3;
  }

  /** Greatest moment over that at the ground. */
  static double momentRatio(double depth, double up) {
    double most = 1;
    double z0 = pivot(depth, up);
    for (int i = 1; i <= 400; i++) {
      double z = depth * i / 400;
      double moment = up + z - (z0 * Math.pow(z, 3) / 6 - Math.pow(z, 4) / 12) / hold(depth, up);
      most = Math.max(most, moment / up);
    }
    return most;
  }

  /** Greatest shear over the push. */
  static double shearRatio(double depth, double up) {
    double z0 = pivot(depth, up);
    return Math.max(1, Math.pow(z0, 3) / 6 / hold(depth, up) - 1);
  }
}
