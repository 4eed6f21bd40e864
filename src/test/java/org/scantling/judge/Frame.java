package org.scantling.judge;

import java.util.ArrayList;
import java.util.List;

/** A plane frame by the stiffness method, second order by the sway of what is pressed. */
final class Frame {
  private static final int ENDS = 6;

  private record Bar(int from, int to, double ea, double ei, int turnFrom, int turnTo) {}

  private final List<double[]> nodesIn = new ArrayList<>();
  private final List<Bar> bars = new ArrayList<>();
  private final List<double[]> loads = new ArrayList<>();
  private final List<Integer> fast = new ArrayList<>();
  private int turns;
  private double[] moved;
  private double[] pressed;

  int node(double xIn, double yIn) {
    nodesIn.add(new double[] {xIn, yIn});
    return nodesIn.size() - 1;
  }

  /** A joint that turns; bars that name the same one are stiffly joined. */
  int turn() {
    return turns++;
  }

  int bar(int from, int to, double ea, double ei, int turnFrom, int turnTo) {
    bars.add(new Bar(from, to, ea, ei, turnFrom, turnTo));
    return bars.size() - 1;
  }

  /** A strut without bending. */
  int strut(int from, int to, double ea) {
    return bar(from, to, ea, 0, -1, -1);
  }

  void load(int node, double alongLb, double upLb) {
    loads.add(new double[] {2 * node, alongLb});
    loads.add(new double[] {2 * node + 1, upLb});
  }

  void pin(int node) {
    fast.add(2 * node);
    fast.add(2 * node + 1);
  }

  /** As it was built, without sway. */
  void solveFirstOrder() {
    pressed = new double[bars.size()];
    once();
  }

  /** First order, then again with the sway of what is pressed until it settles. */
  void solve() {
    pressed = new double[bars.size()];
    for (int round = 0; round < 6; round++) {
      once();
      for (int i = 0; i < bars.size(); i++) {
        pressed[i] = ends(i)[0];
      }
    }
  }

  private int freedom(int turn) {
    return 2 * nodesIn.size() + turn;
  }

  private void once() {
    int size = 2 * nodesIn.size() + turns;
    double[][] k = new double[size][size + 1];
    for (int i = 0; i < bars.size(); i++) {
      int[] at = freedoms(bars.get(i));
      double[][] e = stiffness(i);
      for (int a = 0; a < ENDS; a++) {
        for (int b = 0; b < ENDS; b++) {
          if (at[a] >= 0 && at[b] >= 0) {
            k[at[a]][at[b]] += e[a][b];
          }
        }
      }
    }
    for (double[] load : loads) {
      k[(int) load[0]][size] += load[1];
    }
    for (int held : fast) {
      for (int i = 0; i < size; i++) {
        k[held][i] = 0;
        k[i][held] = 0;
      }
      k[held][held] = 1;
      k[held][size] = 0;
    }
    moved = eliminated(k);
  }

  private static double[] eliminated(double[][] k) {
    int size = k.length;
    for (int i = 0; i < size; i++) {
      int best = i;
      for (int j = i + 1; j < size; j++) {
        best = Math.abs(k[j][i]) > Math.abs(k[best][i]) ? j : best;
      }
      double[] swap = k[i];
      k[i] = k[best];
      k[best] = swap;
      for (int j = i + 1; j < size; j++) {
        double share = k[j][i] / k[i][i];
        if (share != 0) {
          for (int c = i; c <= size; c++) {
            k[j][c] -= share * k[i][c];
          }
        }
      }
    }
    double[] x = new double[size];
    for (int i = size - 1; i >= 0; i--) {
      double rest = k[i][size];
      for (int c = i + 1; c < size; c++) {
        rest -= k[i][c] * x[c];
      }
      x[i] = rest / k[i][i];
    }
    return x;
  }

  private int[] freedoms(Bar bar) {
    return new int[] {
      2 * bar.from(),
      2 * bar.from() + 1,
      bar.turnFrom() < 0 ? -1 : freedom(bar.turnFrom()),
      2 * bar.to(),
      2 * bar.to() + 1,
      bar.turnTo() < 0 ? -1 : freedom(bar.turnTo())
    };
  }

  private double[][] turned(Bar bar) {
    double[] a = nodesIn.get(bar.from());
    double[] b = nodesIn.get(bar.to());
    double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    double c = (b[0] - a[0]) / length;
    double s = (b[1] - a[1]) / length;
    double[][] t = new double[ENDS][ENDS];
    for (int end = 0; end < ENDS; end += 3) {
      t[end][end] = c;
      t[end][end + 1] = s;
      t[end + 1][end] = -s;
      t[end + 1][end + 1] = c;
      t[end + 2][end + 2] = 1;
    }
    return t;
  }

  private double lengthIn(Bar bar) {
    double[] a = nodesIn.get(bar.from());
    double[] b = nodesIn.get(bar.to());
    return Math.hypot(b[0] - a[0], b[1] - a[1]);
  }

  private double[][] local(int index) {
    Bar bar = bars.get(index);
    double h = lengthIn(bar);
    double ea = bar.ea() / h;
    double ei = bar.ei();
    double sway = -pressed[index] / h;
    double v = 12 * ei / (h * h * h) + sway;
    double m = 6 * ei / (h * h);
    return new double[][] {
      {ea, 0, 0, -ea, 0, 0},
      {0, v, m, 0, -v, m},
      {0, m, 4 * ei / h, 0, -m, 2 * ei / h},
      {-ea, 0, 0, ea, 0, 0},
      {0, -v, -m, 0, v, -m},
      {0, m, 2 * ei / h, 0, -m, 4 * ei / h}
    };
  }

  private double[][] stiffness(int index) {
    double[][] t = turned(bars.get(index));
    return times(transposed(t), times(local(index), t));
  }

  /** Forces on the ends of a bar in its own direction: push, shear, moment; and again. */
  double[] ends(int index) {
    int[] at = freedoms(bars.get(index));
    double[][] t = turned(bars.get(index));
    double[][] k = local(index);
    double[] u = new double[ENDS];
    for (int a = 0; a < ENDS; a++) {
      for (int b = 0; b < ENDS; b++) {
        u[a] += at[b] < 0 ? 0 : t[a][b] * moved[at[b]];
      }
    }
    double[] f = new double[ENDS];
    for (int a = 0; a < ENDS; a++) {
      for (int b = 0; b < ENDS; b++) {
        f[a] += k[a][b] * u[b];
      }
    }
    return f;
  }

  double alongIn(int node) {
    return moved[2 * node];
  }

  private static double[][] times(double[][] a, double[][] b) {
    double[][] c = new double[ENDS][ENDS];
    for (int i = 0; i < ENDS; i++) {
      for (int j = 0; j < ENDS; j++) {
        for (int l = 0; l < ENDS; l++) {
          c[i][j] += a[i][l] * b[l][j];
        }
      }
    }
    return c;
  }

  private static double[][] transposed(double[][] a) {
    double[][] c = new double[ENDS][ENDS];
    for (int i = 0; i < ENDS; i++) {
      for (int j = 0; j < ENDS; j++) {
        c[i][j] = a[j][i];
      }
    }
    return c;
  }
}
