package org.scantling.rulecases;

import java.util.function.DoubleUnaryOperator;

/** Moves one of the numbers that pass through it, the one at that place from 0. */
final class Nudge implements DoubleUnaryOperator {
  private final int place;
  private final double factor;
  private int seen;

  Nudge(int place, double factor) {
    this.place = place;
    this.factor = factor;
  }

  int seen() {
    return seen;
  }

  @Override
  public double applyAsDouble(double number) {
    return seen++ == place ? number * factor : number;
  }
}
