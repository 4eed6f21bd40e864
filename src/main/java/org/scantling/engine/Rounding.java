package org.scantling.engine;

/** How an answer is rounded, once, in a named direction; steps in inches. */
enum Rounding {
  NONE {
    @Override
    double round(double value) {
      return value;
    }
  },
  UP_TO_INCH {
    @Override
    double round(double value) {
      return up(value, 1);
    }
  },
  UP_TO_25_MM {
    @Override
    double round(double value) {
      return up(value, 25 / MM_PER_INCH);
    }
  },
  NEAREST_SIXTEENTH {
    @Override
    double round(double value) {
      return Math.rint(value * SIXTEENTHS) / SIXTEENTHS;
    }
  },
  NEAREST_MM {
    @Override
    double round(double value) {
      return Math.rint(value * MM_PER_INCH) / MM_PER_INCH;
    }
  };

  private static final double MM_PER_INCH = 25.4;
  private static final double SIXTEENTHS = 16;
  private static final double LAST_BITS = 1e-9;

  abstract double round(double value);

  private static double up(double value, double step) {
    return Math.ceil(value / step - LAST_BITS) * step;
  }
}
