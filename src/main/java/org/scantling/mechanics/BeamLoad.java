package org.scantling.mechanics;

import org.scantling.quantity.Require;

/** One load on a beam; downwards is positive, uplift negative. */
public sealed interface BeamLoad {

  /**
   * A load spread evenly from one place to another.
   *
   * @param fromIn start, inches from the beam's left tip
   * @param toIn end, inches from the left tip, beyond {@code fromIn}
   * @param forceLbPerIn load on each inch, lb/in, downwards positive
   */
  record Uniform(double fromIn, double toIn, double forceLbPerIn) implements BeamLoad {
    public Uniform {
      Require.finite("load start", fromIn, "in");
      Require.finite("load end", toIn, "in");
      Require.finite("uniform load", forceLbPerIn, "lb/in");
      if (fromIn >= toIn) {
        throw new IllegalArgumentException(
            "uniform load from " + fromIn + " in to " + toIn + " in must end beyond its start");
      }
    }
  }

  /**
   * A load at one place.
   *
   * @param atIn place, inches from the beam's left tip
   * @param forceLb load, lb, downwards positive
   */
  record Point(double atIn, double forceLb) implements BeamLoad {
    public Point {
      Require.finite("load position", atIn, "in");
      Require.finite("point load", forceLb, "lb");
    }
  }
}
