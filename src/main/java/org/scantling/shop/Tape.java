package org.scantling.shop;

import org.scantling.quantity.Length;
import org.scantling.tables.Market;

/** How finely lengths are marked: sixteenths of an inch, or millimetres. */
enum Tape {
  SIXTEENTHS(1.0 / 16),
  MILLIMETRES(1 / 25.4);

  /** A metric length written in inches is a hair off its millimetre. */
  private static final double LAST_BITS = 0.02;

  private final double tickIn;

  Tape(double tickIn) {
    this.tickIn = tickIn;
  }

  static Tape of(String market) {
    return Market.isMetric(market) ? MILLIMETRES : SIXTEENTHS;
  }

  double tickIn() {
    return tickIn;
  }

  /**
   * A length that somebody chose for being handy, such as a foot of spare: on a metric tape its
   * nearest round number, where it is long enough to have one.
   */
  double handy(double inches) {
    return this == MILLIMETRES ? Length.handyMetric(inches) : inches;
  }

  /** The nearest mark. */
  double nearest(double inches) {
    return ticks(inches) * tickIn;
  }

  /** The next mark above, for what something must fit into. */
  double up(double inches) {
    return ticksUp(inches) * tickIn;
  }

  int ticks(double inches) {
    return (int) Math.round(inches / tickIn);
  }

  int ticksUp(double inches) {
    return (int) Math.ceil(inches / tickIn - LAST_BITS);
  }

  int ticksDown(double inches) {
    return (int) Math.floor(inches / tickIn + LAST_BITS);
  }

  double inches(int ticks) {
    return ticks * tickIn;
  }
}
