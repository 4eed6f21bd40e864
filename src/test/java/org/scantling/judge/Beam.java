package org.scantling.judge;

/**
 * A straight timber on level supports by the stiffness method, EI = 1: what a unit load on each
 * node does at every other. Where it is cut over a support two nodes share a place.
 */
final class Beam {
  private static final int BAND = 4;
  private final double[] xIn;
  private final boolean[] cutAfter;
  private final boolean[] held;
  private final double[][] sunk;
  private final double[][] turned;

  Beam(double[] xIn, boolean[] cutAfter, boolean[] held) {
    this.xIn = xIn;
    this.cutAfter = cutAfter;
    this.held = held;
    int nodes = xIn.length;
    double[][] factored = factored();
    sunk = new double[nodes][nodes];
    turned = new double[nodes][nodes];
    for (int at = 0; at < nodes; at++) {
      if (!held[at]) {
        double[] moved = solved(factored, 2 * at);
        for (int i = 0; i < nodes; i++) {
          sunk[at][i] = moved[2 * i];
          turned[at][i] = moved[2 * i + 1];
        }
      }
    }
  }

  int nodes() {
    return xIn.length;
  }

  double xIn(int node) {
    return xIn[node];
  }

  boolean held(int node) {
    return held[node];
  }

  boolean cutAfter(int node) {
    return cutAfter[node];
  }

  /** Sagging moment at a node for a unit load on each node. */
  double[] moment(int node) {
    double[] line = new double[nodes()];
    boolean right = node + 1 < nodes() && !cutAfter[node];
    if (!right && (node == 0 || cutAfter[node - 1])) {
      return line;
    }
    for (int load = 0; load < nodes(); load++) {
      line[load] = right ? startMoment(load, node) : endMoment(load, node - 1);
    }
    return line;
  }

  /** Shear in the piece between a node and the next. */
  double[] shear(int node) {
    double[] line = new double[nodes()];
    for (int load = 0; load < nodes(); load++) {
      line[load] = shear(load, node);
    }
    return line;
  }

  /** What a support gives, upward. */
  double[] reaction(int node) {
    double[] line = new double[nodes()];
    for (int load = 0; load < nodes(); load++) {
      double right = node + 1 < nodes() && !cutAfter[node] ? shear(load, node) : 0;
      double left = node > 0 && !cutAfter[node - 1] ? shear(load, node - 1) : 0;
      line[load] = right - left + (load == node ? 1 : 0);
    }
    return line;
  }

  /** How far a node sinks, to be divided by EI. */
  double[] sag(int node) {
    double[] line = new double[nodes()];
    for (int load = 0; load < nodes(); load++) {
      line[load] = -sunk[load][node];
    }
    return line;
  }

  private double shear(int load, int from) {
    double h = xIn[from + 1] - xIn[from];
    return (12 * (sunk[load][from] - sunk[load][from + 1])
            + 6 * h * (turned[load][from] + turned[load][from + 1]))
        / (h * h * h);
  }

  private double startMoment(int load, int from) {
    double h = xIn[from + 1] - xIn[from];
    return -(6 * (sunk[load][from] - sunk[load][from + 1])
            + h * (4 * turned[load][from] + 2 * turned[load][from + 1]))
        / (h * h);
  }

  private double endMoment(int load, int from) {
    double h = xIn[from + 1] - xIn[from];
    return (6 * (sunk[load][from] - sunk[load][from + 1])
            + h * (2 * turned[load][from] + 4 * turned[load][from + 1]))
        / (h * h);
  }

  private double[][] factored() {
    int size = 2 * nodes();
    double[][] k = new double[size][BAND];
    for (int i = 0; i + 1 < nodes(); i++) {
      if (!cutAfter[i]) {
        double h = xIn[i + 1] - xIn[i];
        double[][] e = {
          {12, 6 * h, -12, 6 * h},
          {6 * h, 4 * h * h, -6 * h, 2 * h * h},
          {-12, -6 * h, 12, -6 * h},
          {6 * h, 2 * h * h, -6 * h, 4 * h * h}
        };
        for (int a = 0; a < 4; a++) {
          for (int b = a; b < 4; b++) {
            k[2 * i + a][b - a] += e[a][b] / (h * h * h);
          }
        }
      }
    }
    for (int i = 0; i < nodes(); i++) {
      if (held[i]) {
        for (int b = 1; b < BAND; b++) {
          k[2 * i][b] = 0;
          if (2 * i - b >= 0) {
            k[2 * i - b][b] = 0;
          }
        }
        k[2 * i][0] = 1;
      }
    }
    for (int i = 0; i < size; i++) {
      for (int b = 1; b < BAND && i + b < size; b++) {
        double share = k[i][b] / k[i][0];
        for (int c = b; c < BAND; c++) {
          k[i + b][c - b] -= share * k[i][c];
        }
      }
    }
    return k;
  }

  private static double[] solved(double[][] k, int loaded) {
    int size = k.length;
    double[] f = new double[size];
    f[loaded] = -1;
    for (int i = loaded; i < size; i++) {
      for (int b = 1; b < BAND && i + b < size; b++) {
        f[i + b] -= k[i][b] / k[i][0] * f[i];
      }
    }
    for (int i = size - 1; i >= 0; i--) {
      double rest = f[i];
      for (int b = 1; b < BAND && i + b < size; b++) {
        rest -= k[i][b] * f[i + b];
      }
      f[i] = rest / k[i][0];
    }
    return f;
  }
}
