package org.scantling.mechanics;

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
      Numbers.finite("load start", fromIn);
      Numbers.finite("load end", toIn);
      Numbers.finite("uniform load", forceLbPerIn);
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
      Numbers.finite("load position", atIn);
      Numbers.finite("point load", forceLb);
    }
  }
}
