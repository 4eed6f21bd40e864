package org.scantling.mechanics;

/** One load case laid on stations: an even load on each step, a point load at each station. */
final class LineLoad {
  private final Stations stations;
  private final double[] perIn;
  private final double[] point;
  private boolean laden;

  LineLoad(Stations stations) {
    this.stations = stations;
    this.perIn = new double[stations.last()];
    this.point = new double[stations.count()];
  }

  /** True where anything was laid on it. */
  boolean laden() {
    return laden;
  }

  void add(BeamLoad load) {
    laden = true;
    if (load instanceof BeamLoad.Uniform uniform) {
      int to = stations.nearest(uniform.toIn());
      for (int step = stations.nearest(uniform.fromIn()); step < to; step++) {
        perIn[step] += uniform.forceLbPerIn();
      }
    } else if (load instanceof BeamLoad.Point single) {
      point[stations.nearest(single.atIn())] += single.forceLb();
    }
  }

  /** Takes away what stands directly on a station, because a support carries it straight down. */
  double takePointAt(int station) {
    double taken = point[station];
    point[station] = 0;
    return taken;
  }

  double perIn(int step) {
    return perIn[step];
  }

  double pointAt(int station) {
    return point[station];
  }

  Stations stations() {
    return stations;
  }
}
